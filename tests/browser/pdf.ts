import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface Printed {
  readonly pages: number;
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  readonly tagged: boolean;
  /** Roles of the structure tree, in reading order. */
  readonly roles: readonly string[];
  readonly alternatives: readonly string[];
  /** All that can be selected, without any spaces. */
  readonly text: string;
  /** Words with where they stand, mm from the left and from the top. */
  readonly words: readonly { readonly text: string; readonly left: number; readonly right: number; readonly base: number }[];
}

const MM = 25.4 / 72;
/** Spaces of every kind: a PDF keeps words apart by place as much as by spaces. */
export const bare = (text: string): string => text.replace(/[\s\u00a0\u202f\u200b]/g, '');

/** Reads a printed file with a library that has nothing to do with the browser that made it. */
export async function readPdf(file: Uint8Array): Promise<Printed> {
  const pdf = await getDocument({ data: new Uint8Array(file), verbosity: 0 }).promise;
  const page = await pdf.getPage(1);
  const [left, bottom, right, top] = page.view;
  const { items } = await page.getTextContent();
  const roles: string[] = [];
  const alternatives: string[] = [];
  type Node = NonNullable<Awaited<ReturnType<typeof page.getStructTree>>>;
  const walk = (node: Node) => {
    if (node.role) roles.push(node.role);
    if (node.alt) alternatives.push(node.alt);
    for (const child of node.children ?? []) walk(child);
  };
  const tree = await page.getStructTree();
  if (tree) walk(tree);
  return {
    pages: pdf.numPages,
    width: (right - left) * MM,
    height: (top - bottom) * MM,
    tagged: (await pdf.getMarkInfo())?.Marked === true,
    roles,
    alternatives,
    text: bare(items.map((i) => i.str ?? '').join('')),
    words: items.flatMap((i) => (i.str?.trim() && i.transform ? [{ text: i.str, left: i.transform[4]! * MM, right: (i.transform[4]! + (i.width ?? 0)) * MM, base: (top - i.transform[5]!) * MM }] : []))
  };
}
