import type * as z from 'zod/mini';

/** As much of a schema's inside as is needed to walk it beside a value. */
interface Inside {
  readonly type: string;
  readonly innerType?: z.ZodMiniType;
  readonly element?: z.ZodMiniType;
  readonly valueType?: z.ZodMiniType;
  readonly shape?: Readonly<Record<string, z.ZodMiniType>>;
  readonly options?: readonly z.ZodMiniType[];
  readonly discriminator?: string;
  readonly values?: readonly unknown[];
}
const inside = (schema: z.ZodMiniType): Inside => schema._zod.def as unknown as Inside;

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The fields that an object may have here; of a union, those of the option that the value names. */
export function fieldsOf(schema: z.ZodMiniType, value: unknown): Readonly<Record<string, z.ZodMiniType>> | undefined {
  const def = inside(schema);
  if (def.innerType) return fieldsOf(def.innerType, value);
  if (!def.options) return def.shape;
  const named = isObject(value) ? value[def.discriminator!] : undefined;
  const option = def.options.find((o) => inside(inside(o).shape![def.discriminator!]!).values?.includes(named));
  return option && inside(option).shape;
}

/** What stands under a key or an index. */
export function memberOf(schema: z.ZodMiniType, value: unknown, key: string | number): z.ZodMiniType | undefined {
  const def = inside(schema);
  if (def.innerType) return memberOf(def.innerType, value, key);
  const fields = fieldsOf(schema, value);
  return fields && Object.hasOwn(fields, key) ? fields[key] : (def.element ?? def.valueType);
}
