import type { Document } from '#core/setting/document.ts';
import { download } from '#store/files.ts';
import { fileStem } from '../file-name.ts';

export const fileName = (name: string): string => `${fileStem(name)}.json`;

/** The text of a file: fields in the order of the schema. */
export const fileText = async (document: Document): Promise<string> => (await import('#job/write.ts')).writeDocument(document);

export const saveFile = async (document: Document): Promise<void> => download(fileName(document.name), await fileText(document), 'application/json');

/** A text as it is kept, whether it can be read or not. */
export const saveText = (name: string, text: string): void => download(fileName(name), text, 'application/json');

/** A document as it came, whatever its version. */
export const saveOriginal = (name: string, { version, bytes }: { readonly version: number; readonly bytes: Uint8Array<ArrayBuffer> }): void =>
  download(`${fileStem(name, `version-${version}`)}.json`, new Blob([bytes]), 'application/json');
