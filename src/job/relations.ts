import { parseOwn } from '#core/dose/own/parse.ts';
import { ISO_10625 } from '#core/sprayer/iso10625.ts';
import { KNOWN_ASSUMPTIONS } from './assumptions.ts';
import { FORMULA_LENGTH, RANGES } from './limits.ts';
import { nearest } from './nearest.ts';
import { problem, type Problem } from './problem.ts';
import { amendmentProblems } from './record/amendments.ts';
import { isObject } from './shape.ts';

/*
 * What no field can tell alone: ids that must differ, names that must lead somewhere, lists that must rise. Looks at the
 * raw value, so that these are told together with all other problems, and passes over whatever is not of the right shape.
 */

type Step = string | number;
type Raw = Readonly<Record<string, unknown>>;

/** A raw object and where it stands. */
interface Item {
  readonly raw: Raw;
  readonly steps: readonly Step[];
}

const items = ({ raw, steps }: Item, field: string): Item[] => {
  const list = raw[field];
  if (!Array.isArray(list)) return [];
  return list.flatMap((value, i) => (isObject(value) ? [{ raw: value, steps: [...steps, field, i] }] : []));
};

const listed = (item: Item, field: string): Item[] | undefined => (Array.isArray(item.raw[field]) ? items(item, field) : undefined);

const child = ({ raw, steps }: Item, field: string): Item[] => {
  const value = raw[field];
  return isObject(value) ? [{ raw: value, steps: [...steps, field] }] : [];
};

const text = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined);

const idsOf = (list: readonly Item[]): Map<string, Item> => {
  const ids = new Map<string, Item>();
  for (const item of list) {
    const id = text(item.raw['id']);
    if (id !== undefined && !ids.has(id)) ids.set(id, item);
  }
  return ids;
};

export function relationProblems(document: Raw): Problem[] {
  const root: Item = { raw: document, steps: [] };
  const blocks = items(root, 'blocks');
  const machines = items(root, 'machines');
  const tables = items(root, 'nozzleTables');
  const labels = items(root, 'labels');
  const own = items(root, 'ownStrategies');
  const records = items(root, 'records');
  const sizes = sizesByTable(tables);
  return [
    ...[blocks, machines, tables, labels, own, records].flatMap((list) => duplicates(list)),
    ...reserved(tables),
    ...blocks.flatMap((block) => blockProblems(block, listed(root, 'machines'), listed(root, 'labels'), sizes)),
    ...machines.flatMap((machine) => machineProblems(machine, sizes)),
    ...tables.flatMap(tableProblems),
    ...labels.flatMap((label) => ordered(label, 'minWaterLPerHa', 'maxWaterLPerHa')),
    ...own.flatMap(formulaProblems),
    ...child(root, 'assumptions').flatMap(assumptionProblems),
    ...amendmentProblems(records)
  ];
}

/** Sizes by nozzle table; the sizes of ISO 10625 are always there. */
type Sizes = ReadonlyMap<string, ReadonlySet<string>>;

const sizesByTable = (tables: readonly Item[]): Sizes =>
  new Map([
    ...[...idsOf(tables)].map(([id, table]) => [id, new Set(idsOf(items(table, 'sizes')).keys())] as const),
    [ISO_10625.id, new Set(ISO_10625.sizes.map((s) => s.id))]
  ]);

/** `machines` and `labels` are undefined where the file has no such list: what is missing is told once. */
function blockProblems(block: Item, machines: readonly Item[] | undefined, labels: readonly Item[] | undefined, sizes: Sizes): Problem[] {
  const known = idsOf(machines ?? []);
  const machine = known.get(text(block.raw['machine']) ?? '');
  const rungs = items(block, 'rungs');
  return [
    ...leads(block, 'machine', 'machine', machines && known.keys()),
    ...leads(block, 'label', 'label', labels && idsOf(labels).keys()),
    ...duplicates(rungs),
    ...rungs.flatMap((rung) => [
      ...child(rung, 'canopy').flatMap((canopy) => [
        ...rising(canopy, 'profile', 'heightM'),
        ...child(canopy, 'proposed').flatMap((p) => [...leads(p, 'from', 'rung', idsOf(rungs).keys()), ...leads(p, 'to', 'rung', idsOf(rungs).keys())])
      ]),
      ...child(rung, 'survey').flatMap((survey) => items(survey, 'trees').flatMap((tree) => [...rising(tree, 'profile', 'heightM'), ...widthProblems(tree)])),
      ...child(rung, 'photo').flatMap((photo) => [...rising(photo, 'bands', 'fromM'), ...items(photo, 'bands').flatMap((b) => [...ordered(b, 'fromM', 'toM'), ...ordered(b, 'gaps', 'pixels')])]),
      // Without its machine nothing can be said about a setting.
      ...(machine ? [...child(rung, 'setting'), ...child(rung, 'saved')].flatMap((s) => settingProblems(s, machine, sizes)) : []),
      ...child(rung, 'check').flatMap((check) => checkProblems(check, machine, sizes)),
      ...child(rung, 'fitting').flatMap((fitting) => fittingProblems(fitting, machine, sizes)),
      ...child(rung, 'mix').flatMap((mix) => {
        const partners = items(mix, 'partners');
        return [...duplicates(partners, 'label'), ...partners.flatMap((p) => leads(p, 'label', 'label', labels && idsOf(labels).keys()))];
      })
    ])
  ];
}

/** A tree has a width: its own, or one of its profile. */
function widthProblems(tree: Item): Problem[] {
  const { least, most, unit } = RANGES.trees.widthM;
  const told = tree.raw['widthM'] !== undefined || items(tree, 'profile').some((p) => typeof p.raw['widthM'] !== 'number' || p.raw['widthM'] >= least);
  return told ? [] : [problem([...tree.steps, 'widthM'], 'missing', undefined, { wanted: 'number', least, most, unit })];
}

function settingProblems(setting: Item, machine: Item, sizes: Sizes): Problem[] {
  const positions = idsOf(items(machine, 'nozzles'));
  const set = items(setting, 'nozzles');
  return [
    ...leads(setting, 'gear', 'gear', idsOf(items(machine, 'gears')).keys()),
    ...duplicates(set, 'position'),
    ...set.flatMap((nozzle) => {
      const onMachine = positions.get(text(nozzle.raw['position']) ?? '')?.raw;
      const table = text(nozzle.raw['table']) ?? text(onMachine?.['table']);
      // A table alone must have the size that the machine carries.
      const sized = nozzle.raw['size'] === undefined && nozzle.raw['table'] !== undefined ? text(onMachine?.['size']) : text(nozzle.raw['size']);
      return [
        ...leads(nozzle, 'position', 'position', positions.keys()),
        ...leads(nozzle, 'table', 'table', sizes.keys()),
        ...leads(nozzle, 'size', 'size', sizes.get(table ?? '')?.keys(), sized, table)
      ];
    })
  ];
}

function checkProblems(check: Item, machine: Item | undefined, sizes: Sizes): Problem[] {
  const positions = machine && idsOf(items(machine, 'nozzles'));
  return [
    ...duplicates(items(check, 'ticks'), 'item'),
    ...items(check, 'rounds').flatMap((round) => {
      const catches = items(round, 'catches');
      return [
        ...(machine ? child(round, 'setting').flatMap((s) => settingProblems(s, machine, sizes)) : []),
        ...duplicates(catches, 'position'),
        ...catches.flatMap((c) => leads(c, 'position', 'position', positions?.keys()))
      ];
    })
  ];
}

function fittingProblems(fitting: Item, machine: Item | undefined, sizes: Sizes): Problem[] {
  const positions = machine && idsOf(items(machine, 'nozzles'));
  const weights = items(fitting, 'weights');
  return [
    ...ordered(fitting, 'pressureMinBar', 'pressureMaxBar'),
    ...ordered(fitting, 'speedMinKmH', 'speedMaxKmH'),
    ...duplicates(weights, 'position'),
    ...weights.flatMap((w) => leads(w, 'position', 'position', positions?.keys())),
    ...items(fitting, 'stock').flatMap((item) => {
      const table = text(item.raw['table']);
      return [...leads(item, 'table', 'table', sizes.keys()), ...leads(item, 'size', 'size', sizes.get(table ?? '')?.keys(), text(item.raw['size']), table)];
    })
  ];
}

function machineProblems(machine: Item, sizes: Sizes): Problem[] {
  const nozzles = items(machine, 'nozzles');
  return [
    ...ordered(machine, 'pressureMinBar', 'pressureMaxBar'),
    ...ordered(machine, 'speedMinKmH', 'speedMaxKmH'),
    ...ordered(machine, 'ptoMinRpm', 'ptoMaxRpm'),
    ...child(machine, 'outlet').flatMap((outlet) => [
      ...ordered(outlet, 'fromDeg', 'toDeg'),
      ...ordered(outlet, 'fromHeightM', 'toHeightM'),
      ...samePlace(items(outlet, 'spouts'))
    ]),
    ...duplicates(items(machine, 'gears')),
    ...duplicates(nozzles),
    ...nozzles.flatMap((nozzle) => {
      const table = text(nozzle.raw['table']);
      return [
        ...leads(nozzle, 'table', 'table', sizes.keys()),
        ...leads(nozzle, 'size', 'size', sizes.get(table ?? '')?.keys(), text(nozzle.raw['size']), table)
      ];
    })
  ];
}

function tableProblems(table: Item): Problem[] {
  const sizes = items(table, 'sizes');
  return [
    ...ordered(table, 'pressureMinBar', 'pressureMaxBar'),
    ...duplicates(sizes),
    ...sizes.flatMap((size) => [
      ...rising(size, 'points', 'pressureBar'),
      ...rising(size, 'points', 'flowLPerMin'),
      ...rising(size, 'droplets', 'fromBar')
    ])
  ];
}

/** An assumption must be one that the engine makes, and within its bounds. */
const assumptionProblems = ({ raw, steps }: Item): Problem[] =>
  Object.entries(raw).flatMap(([id, value]) => {
    const known = KNOWN_ASSUMPTIONS.get(id);
    if (!known) return leads({ raw, steps }, id, 'assumption', KNOWN_ASSUMPTIONS.keys(), id);
    const { least, most, unit } = known;
    if (typeof value !== 'number' || (value >= least && value <= most)) return [];
    return [problem([...steps, id], 'out-of-range', value, { least, most, unit })];
  });

/** A formula of the user's own must be one. */
const formulaProblems = ({ raw, steps }: Item): Problem[] =>
  ['index', 'water'].flatMap((field) => {
    const formula = text(raw[field]);
    // What is too short or too long is told by the field itself.
    if (formula === undefined || formula === '' || formula.length > FORMULA_LENGTH) return [];
    const parsed = parseOwn(formula, '');
    return parsed.kind === 'refused' ? [problem([...steps, field], 'bad-formula', formula, { ...parsed.parameters, reason: parsed.code })] : [];
  });

function duplicates(list: readonly Item[], field = 'id'): Problem[] {
  const first = new Map<string, Item>();
  return list.flatMap((item) => {
    const id = text(item.raw[field]);
    if (id === undefined) return [];
    const earlier = first.get(id);
    if (!earlier) first.set(id, item);
    return earlier ? [problem([...item.steps, field], 'duplicate-id', id, { id, first: Number(earlier.steps.at(-1)) + 1 })] : [];
  });
}

/** Refuses things that would stand in each other: at the same height and offset. */
function samePlace(list: readonly Item[]): Problem[] {
  const first = new Map<string, Item>();
  return list.flatMap((item) => {
    const { heightM, offsetM } = item.raw;
    if (typeof heightM !== 'number' || typeof offsetM !== 'number') return [];
    const place = `${heightM} ${offsetM}`;
    const earlier = first.get(place);
    if (!earlier) first.set(place, item);
    return earlier ? [problem(item.steps, 'same-place', item.raw, { heightM, offsetM, first: Number(earlier.steps.at(-1)) + 1 })] : [];
  });
}

const reserved = (tables: readonly Item[]): Problem[] =>
  tables
    .filter((t) => t.raw['id'] === ISO_10625.id)
    .map((t) => problem([...t.steps, 'id'], 'reserved-id', ISO_10625.id, { id: ISO_10625.id }));

const TOLD_CHOICES = 20;

/**
 * Refuses a name that leads nowhere. Says nothing where nothing stands, or where `known` is itself unknown, for then the
 * name that should have led there has been refused already.
 */
function leads(
  { raw, steps }: Item,
  field: string,
  kind: string,
  known: Iterable<string> | undefined,
  id = text(raw[field]),
  within = ''
): Problem[] {
  if (id === undefined || known === undefined) return [];
  const all = [...known];
  if (all.includes(id)) return [];
  const choices = all.slice(0, TOLD_CHOICES).join(', ') + (all.length > TOLD_CHOICES ? ', …' : '');
  return [problem([...steps, field], 'no-such-reference', id, { kind, id, within, choices, nearest: nearest(id, all) })];
}

/** Refuses entries of a list that do not rise above the one before. */
function rising(item: Item, field: string, by: string): Problem[] {
  const list = items(item, field);
  return list.flatMap(({ raw, steps }, i) => {
    const before = list[i - 1]?.raw[by];
    const value = raw[by];
    if (typeof value !== 'number' || typeof before !== 'number' || value > before) return [];
    return [problem([...steps, by], 'not-rising', value, { before })];
  });
}

/** Refuses a least that stands above the most beside it. */
function ordered({ raw, steps }: Item, least: string, most: string): Problem[] {
  const [a, b] = [raw[least], raw[most]];
  if (typeof a !== 'number' || typeof b !== 'number' || a <= b) return [];
  return [problem([...steps, least], 'least-above-most', a, { least: a, most: b, mostField: most })];
}
