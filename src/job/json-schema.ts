import * as z from 'zod/mini';
import { FORMAT, VERSION } from '#core/setting/document.ts';
import { DESCRIPTIONS } from './descriptions.ts';
import { limitsOf } from './limits-of.ts';
import { DOCUMENT } from './schema.ts';

type Node = { [key: string]: unknown; properties?: Record<string, Node>; items?: Node; oneOf?: Node[]; anyOf?: Node[] };

/** Where the schema is published: a name, not an address that anything is fetched from. */
export const SCHEMA_FILE = `${FORMAT}-${VERSION}.json`;

/** JSON Schema (2020-12) of the document, made from the schemas that read it, with the meaning and the unit of each field. */
export function jsonSchema(): Node {
  const { $schema, ...schema } = z.toJSONSchema(DOCUMENT) as Node;
  describe(schema, 'document');
  return {
    $schema,
    $id: SCHEMA_FILE,
    title: 'Rowtailor document',
    description:
      'Blocks, machines, nozzle tables and labels. A reader refuses more than this schema can say: ids that stand twice, ' +
      'references that lead nowhere, lists that do not rise, assumptions that do not exist, a least above its most.',
    ...schema
  };
}

function describe(node: Node, owner: string): void {
  for (const option of node.oneOf ?? node.anyOf ?? []) describe(option, owner);
  if (node.items) describe(node.items, owner);
  for (const [field, property] of Object.entries(node.properties ?? {})) {
    const text = DESCRIPTIONS[owner === 'saved' ? 'setting' : owner]?.[field];
    if (text === undefined) throw new Error(`no description of ${owner}.${field}`);
    const unit = limitsOf(`${owner}.${field}`)?.unit;
    property['description'] = unit && unit !== '1' ? `${text} In ${unit}.` : text;
    describe(property, field);
  }
}
