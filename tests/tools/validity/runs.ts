/** Everything that the page of validity says in figures, from running the engine. Nothing here is a test: tests hold single checks, this shows all of them. */
import { emptyPath, jetPath, JET_STEP_M, type Density, type JetStart } from '#core/air/jet.ts';
import { windProfile } from '#core/air/wind.ts';
import { SPRAY_CONSTANTS } from '#core/spray/assumptions.ts';
import { balance } from '#core/spray/balance.ts';
import { band } from '#core/spray/band.ts';
import { sprayCase } from '#core/spray/case.ts';
import { impaction, lifetimeS, terminalSpeed } from '#core/spray/drop.ts';
import { transport } from '#core/spray/transport.ts';
import type { SprayBalance, SprayCase } from '#core/spray/types.ts';
import { document, result, table, arcNozzles } from '../../support/sample.ts';
import { casesOf, PUBLISHED_BALANCES, type PublishedBalance } from '../../support/spray-balances.ts';
import { sprayCaseOf, type Orchard } from '../../support/spray.ts';

const balanceOf = (c: SprayCase): SprayBalance => balance(c, transport(c));
const run = (o: Partial<Orchard>): SprayBalance => balanceOf(sprayCaseOf(o));
const percent = (share: number): number => 100 * share;
const firstRow = (b: SprayBalance): number => b.shares.near + b.shares.far;
const change = (now: number, before: number): number => percent(now / before - 1);
const span = (values: readonly number[]): readonly [number, number] => [Math.min(...values), Math.max(...values)];
/** The feasibility orchard with other constants. */
const withConstants = (o: Partial<Orchard>, more: Partial<SprayCase['constants']>): Partial<Orchard> => ({ ...o, constants: { coreRatio: 1, ...o.constants, ...more } });

const BARE: Partial<Orchard> = withConstants({ ladM2PerM3: 0 }, { woodM2PerM3: 0.3 });
const THIN: Partial<Orchard> = { ladM2PerM3: 0.8 };
/** Tall trees, little air, an alley open to the wind: where wind has most to take hold of. */
const TALL: Partial<Orchard> = withConstants({ rowSpacingM: 5.5, heightM: 4.5, toDeg: 65, airM3PerH: 15_000, outletMPerS: 15 }, { windDecay: 0.4 });

const WINDS = [0, 0.5, 1, 1.5, 1.8, 2, 2.5, 3, 3.5, 4] as const;

/** Deposit on the rows beside the machine by wind, % against still air: of both sides together, and of each. */
function wind(o: Partial<Orchard>) {
  const all = WINDS.map((windMPerS) => run(withConstants(o, { windMPerS })));
  const ofSide = (b: SprayBalance, side: 'L' | 'R'): number => b.perNozzle.filter((n) => n.position.startsWith(side)).reduce((s, n) => s + n.shares.near + n.shares.far, 0);
  const curve = (of: (b: SprayBalance) => number) => WINDS.map((w, i) => [w, change(of(all[i]!), of(all[0]!))] as const);
  // The wind blows from the left, so the left is sprayed against it.
  return { both: curve(firstRow), against: curve((b) => ofSide(b, 'L')), along: curve((b) => ofSide(b, 'R')) };
}

/** Air cut to a share of the fan's, flow and speed together, in 2 m/s: what is lost and what the first row gets, % against the whole air. */
function lessAir(name: string, o: Partial<Orchard>) {
  const [whole, half, third] = [1, 0.5, 0.35].map((share) => run(withConstants({ ...o, airM3PerH: 30_000 * share, outletMPerS: 30 * share }, { windMPerS: 2 }))) as [SprayBalance, SprayBalance, SprayBalance];
  const cut = (b: SprayBalance) => ({ lost: change(b.lost, whole.lost), row: change(firstRow(b), firstRow(whole)) });
  return { name, lost: percent(whole.lost), half: cut(half), third: cut(third) };
}

/** Forward speed at the same litres per hectare, by way of whole documents. */
function speeds() {
  return [4, 6, 8].map((speedKmH) => {
    const parts = { setting: { speedKmH, nozzles: arcNozzles().map((n) => ({ position: n.id, table: 'own', size: 'x' })) }, tables: [table(0.2 * speedKmH)] };
    const c = sprayCase(document(parts), result(parts));
    if ('kind' in c) throw new Error(c.code);
    const b = balanceOf(c);
    return { speedKmH, litres: c.volumeLPerHa, onTrees: percent(b.onTrees), lost: percent(b.lost) };
  });
}

export type Verdict = 'hit' | 'within the guesses' | 'miss';
/** A guess this near to what was published counts as a hit, points. */
export const HIT = 5;

/** One published balance against its guess, every corner of the guesses, and the band that the engine prints. */
function published(p: PublishedBalance) {
  const { guess, corners } = casesOf(p);
  const middle = balanceOf(guess);
  const over = span([guess, ...corners].map((c) => percent(balanceOf(c).onTrees)));
  const printed = band(guess).onTrees.map(percent) as [number, number];
  const [low, high] = p.published;
  const value = percent(middle.onTrees);
  const meets = ([a, b]: readonly [number, number]): boolean => a <= high && b >= low;
  const verdict: Verdict = value >= low - HIT && value <= high + HIT ? 'hit' : meets(over) ? 'within the guesses' : 'miss';
  return { ...p, value, over, band: printed, banded: meets(printed), verdict, lost: percent(middle.lost) };
}

/** Ground beyond the last row, bare trees over trees in leaf, for plumes of 50 and 65° and winds of 2 and 3 m/s. */
function earlyLate() {
  const ratios = [50, 65].flatMap((toDeg) =>
    [2, 3].map((windMPerS) => {
      const out = (o: Partial<Orchard>) => run(withConstants({ ...o, toDeg }, { windMPerS })).shares['ground-out'];
      return out(BARE) / out({});
    })
  );
  return { ratios, over: span(ratios), value: ratios.reduce((a, b) => a + b, 0) / ratios.length };
}

const STILL = windProfile(3, 0, 1);
const CONSTANTS = { entrainment: SPRAY_CONSTANTS.entrainment.value, roundEntrainment: SPRAY_CONSTANTS.roundEntrainment.value, canopyDrag: SPRAY_CONSTANTS.canopyDrag.value };
const EMPTY: Density = () => 0;

/** A level jet from x = 0 (a radial one from its rim), high above ground, as [distance from the outlet, speed in the middle], m and m/s. */
function free(start: Partial<JetStart> & Pick<JetStart, 'kind' | 'widthM'>, density = EMPTY) {
  const path = jetPath(emptyPath(start.kind), { xM: 0, zM: 5, angleDeg: 0, speedMPerS: 30, radiusM: 0, ...start }, STILL, density, CONSTANTS);
  const places = Array.from({ length: path.count }, (_, i) => [path.x[i]! - path.x[0]!, path.speed[i]!] as const);
  const node = (x: number): number => Math.round(x / JET_STEP_M);
  return { places, speed: (x: number) => path.speed[node(x)]!, half: (x: number) => path.b[node(x)]!, flow: (x: number) => (2 * Math.PI * path.b[node(x)]! ** 2 * Math.hypot(path.ux[node(x)]!, path.uz[node(x)]!)) / Math.LN2 };
}
export const PLANE_M = 0.12;
export const ROUND_M = 0.2;
export const RADIUS_M = 0.5;

/** Peak speed in front of a crown over that behind it: leaf path of 2.5, by depth of the crown, its distance, and the kind of jet. */
function frontBack(leafPath: number) {
  const ratios = (['plane', 'radial', 'round'] as const).flatMap((kind) =>
    [1, 2].flatMap((distance) =>
      [0.8, 1.6].map((depth) => {
        const crown: Density = (x) => (x > distance + 0.01 && x < distance + depth + 0.01 ? leafPath / depth : 0);
        const jet = free({ kind, widthM: kind === 'round' ? ROUND_M : PLANE_M, ...(kind === 'radial' ? { radiusM: RADIUS_M } : {}) }, crown);
        return jet.speed(distance) / jet.speed(distance + depth);
      })
    )
  );
  return { value: ratios.reduce((a, b) => a + b, 0) / ratios.length, over: span(ratios) };
}

/** Two settings whose order was published. */
function directions() {
  const base = run({});
  const pair = (before: SprayBalance, after: SprayBalance) => ({ onTrees: [percent(before.onTrees), percent(after.onTrees)] as const, lost: [percent(before.lost), percent(after.lost)] as const });
  return {
    drops: pair(run({ vmdUm: 156 }), run({ vmdUm: 237 })),
    plume: pair(run({ toDeg: 75 }), base),
    bare: pair(base, run(BARE))
  };
}

/** Very little water in very fine drops on the same hedge. */
function fineDrops() {
  const of = (id: string, vmdUm?: number): number => {
    const { guess } = PUBLISHED_BALANCES.find((p) => p.id === id)!;
    return percent(run({ ...guess, ...(vmdUm === undefined ? {} : { vmdUm }) }).onTrees);
  };
  return { full: [of('hedge-full'), of('hedge-full', 70)] as const, bare: [of('hedge-bare'), of('hedge-bare', 70)] as const };
}

export function validity() {
  const plane = free({ kind: 'plane', widthM: PLANE_M });
  const radial = free({ kind: 'radial', widthM: PLANE_M, radiusM: RADIUS_M });
  const round = free({ kind: 'round', widthM: ROUND_M });
  return {
    wind: { matched: wind({}), tall: wind(TALL) },
    lessAir: [lessAir('full leaf', {}), lessAir('thin leaf', THIN), lessAir('bare trees', BARE)],
    speeds: speeds(),
    balances: PUBLISHED_BALANCES.map(published),
    fineDrops: fineDrops(),
    earlyLate: earlyLate(),
    frontBack: [2.5, 1.5].map(frontBack),
    jets: { plane, radial, round },
    terminal: (um: number) => terminalSpeed(um * 1e-6),
    life: (um: number, deltaT: number) => lifetimeS(um * 1e-6, deltaT),
    impaction: (st: number) => impaction(st, SPRAY_CONSTANTS.leafBeta.value),
    directions: directions()
  };
}
export type Validity = ReturnType<typeof validity>;
