import type * as z from 'zod/mini';
import type { Document } from '#core/setting/document.ts';
import { DOCUMENT } from './schema.ts';
import { fieldsOf, isObject, memberOf } from './shape.ts';

/** The text of a file: fields in the order of the schema, two spaces, a line break at the end. Equal documents give equal bytes. */
export const writeDocument = (document: Document): string => JSON.stringify(inOrder(DOCUMENT, document), null, 2) + '\n';

/** A value with its keys in the order of its schema. */
export function inOrder(schema: z.ZodMiniType | undefined, value: unknown): unknown {
  if (!schema) return value;
  if (Array.isArray(value)) return value.map((v, i) => inOrder(memberOf(schema, value, i), v));
  if (!isObject(value)) return value;
  // What the schema does not know by name is a record: its keys are sorted.
  const keys = Object.keys(fieldsOf(schema, value) ?? {});
  const order = keys.length > 0 ? keys : Object.keys(value).sort();
  return Object.fromEntries(order.filter((k) => Object.hasOwn(value, k)).map((k) => [k, inOrder(memberOf(schema, value, k), value[k])]));
}
