/** Plain data as JSON has it. */
export type Plain = null | boolean | number | string | readonly Plain[] | { readonly [key: string]: Plain };
type Key = string | number;

/**
 * One change on the way from one state to another: a member is set, a member is taken out, or a stretch of a list gives way to
 * another. A patch is a list of them, in any order, for no two touch the same place.
 */
export type Change = readonly ['set', readonly Key[], Plain] | readonly ['out', readonly Key[]] | readonly ['splice', readonly Key[], number, number, readonly Plain[]];

const isList = (v: unknown): v is readonly Plain[] => Array.isArray(v);
const isObject = (v: unknown): v is { readonly [key: string]: Plain } => typeof v === 'object' && v !== null && !Array.isArray(v);

/** What makes `to` of `from`. Parts that are one and the same in both are not looked into: after an edit that is nearly everything. */
export function difference(from: Plain, to: Plain, at: readonly Key[] = []): Change[] {
  if (from === to) return [];
  if (isList(from) && isList(to)) return from.length === to.length ? from.flatMap((v, i) => difference(v, to[i]!, [...at, i])) : [stretch(from, to, at)];
  if (!isObject(from) || !isObject(to)) return [['set', at, to]];
  const changes: Change[] = [];
  // A member that is undefined is none: JSON has no other way to say so.
  for (const key of Object.keys(from)) if (from[key] !== undefined && to[key] === undefined) changes.push(['out', [...at, key]]);
  for (const [key, value] of Object.entries(to)) {
    if (value === undefined) continue;
    if (from[key] === undefined) changes.push(['set', [...at, key], value]);
    else changes.push(...difference(from[key], value, [...at, key]));
  }
  return changes;
}

/** The shortest stretch of a list outside which both are the same. */
function stretch(from: readonly Plain[], to: readonly Plain[], at: readonly Key[]): Change {
  const shorter = Math.min(from.length, to.length);
  let head = 0;
  while (head < shorter && from[head] === to[head]) head++;
  let tail = 0;
  while (tail < shorter - head && from[from.length - 1 - tail] === to[to.length - 1 - tail]) tail++;
  return ['splice', at, head, from.length - head - tail, to.slice(head, to.length - tail)];
}

/** The state after a patch; what the patch does not touch is the same object as before. Throws where the patch does not fit. */
export const applied = (state: Plain, patch: readonly Change[]): Plain => patch.reduce<Plain>((now, change) => inside(now, change[1], 0, change), state);

function inside(state: Plain | undefined, at: readonly Key[], depth: number, change: Change): Plain {
  if (depth === at.length) return ended(state, change);
  const key = at[depth]!;
  if (isList(state) && typeof key === 'number' && key < state.length) return state.map((v, i) => (i === key ? inside(v, at, depth + 1, change) : v));
  if (!isObject(state) || typeof key !== 'string' || key === '__proto__') throw new RangeError('a step does not fit the document');
  const last = depth === at.length - 1;
  if (!Object.hasOwn(state, key) && !(last && change[0] === 'set')) throw new RangeError('a step does not fit the document');
  const next = { ...state };
  if (last && change[0] === 'out') delete next[key];
  else next[key] = inside(state[key], at, depth + 1, change);
  return next;
}

function ended(state: Plain | undefined, change: Change): Plain {
  if (change[0] === 'set') return change[2];
  if (change[0] !== 'splice' || !isList(state)) throw new RangeError('a step does not fit the document');
  const [, , from, out, put] = change;
  if (from + out > state.length) throw new RangeError('a step does not fit the document');
  return [...state.slice(0, from), ...put, ...state.slice(from + out)];
}
