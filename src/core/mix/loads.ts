import { MIX_STRENGTH, product } from '../dose/product.ts';
import type { Label } from '../dose/types.ts';
import { CONCENTRATION } from '../dose/water.ts';
import { ASSUMPTIONS } from '../setting/assumptions.ts';
import type { Document } from '../setting/document.ts';
import type { Result } from '../setting/result.ts';
import { given, isRefused, refused, valueOf, type Answer, type Given } from '../working/answer.ts';
import { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { ranked } from '../advice/finding.ts';
import { loadsFindings } from './findings.ts';
import {
  AREA_PER_TANK, EQUAL_LOAD, FULL_LOADS, LAST_LOAD, LOAD_AREA, LOAD_COUNT, MIX_FOR_AREA, MIX_TO_PREPARE, OVER_ORDERED, PRODUCT_FOR_AREA, PRODUCT_LEFT,
  RINSE_LEFT, RINSE_TENFOLD, RINSE_TENTH, ROWS_AREA, USABLE_TANK
} from './formulas.ts';
import { groupOf, orderOfMixing } from './order.ts';
import { portions, rounded, type Portions } from './portions.ts';
import type { Load, LoadsState, PartnerState, Rinse } from './state.ts';
import type { Mix, Partner } from './types.ts';
import { rowPasses, workOf } from './work.ts';

/** What a headland check has measured of the setting. */
export interface Measured {
  readonly volume?: Answer;
  readonly speed?: Answer;
}

/** Beyond this a slip of tank or area is likelier than a plan. */
const MOST_LOADS = 1000;

/**
 * The loads of one rung's treatment. Pure. The volume is the measured one where there is one, else the setting's; the area is the mix's own, else
 * the block's, else that of its rows. Refuses by name an area that is not known, a tank that the residual fills, and more than 1000 loads: what
 * rests on them is refused with them, the rest stands.
 */
export function loadsState(document: Document, result: Result, measured: Measured = {}): LoadsState {
  const { block, machine, rung } = result;
  const mix: Mix = rung.mix ?? {};
  const assumptions = new Assumptions(ASSUMPTIONS, document.assumptions);

  const known = measured.volume && !isRefused(measured.volume) ? measured.volume : null;
  const volume = known ?? result.sprayer.volume;
  const speed = measured.speed && !isRefused(measured.speed) ? measured.speed : result.sprayer.speed;
  const rowsArea = areaOfRows(result);
  const [area, areaFrom] = areaOf(mix, block.areaHa, rowsArea);

  const tank = given(machine.tankL, 'L', 'stated', { path: 'machine.tankL' });
  const residual = given(machine.residualL ?? 0, 'L', machine.residualL === undefined ? 'assumed' : 'stated', { path: 'machine.residualL' });
  const usable = residual.value < tank.value ? derive(USABLE_TANK, { T: tank, r: residual }) : refused('no-usable-tank', 'machine.residualL');
  const sprayed = derive(MIX_FOR_AREA, { A: area, V: volume });
  const fills = mix.fills ?? 'equal';
  const { count, amounts } = fillsOf(sprayed, usable, fills);
  const areas = amounts.map((Ul) => derive(LOAD_AREA, { Ul, V: volume }));

  const labels = partnersOf(mix, block.label).flatMap((partner) => {
    const label = document.labels.find((l) => l.id === partner.label);
    return label ? [{ label, partner }] : [];
  });
  const shared = labels.map(({ label, partner }) => partnerState(label, partner, result, { volume, area, residual, areas }));
  const partners = shared.map((s) => s.state);
  const whole = mix.areaHa === undefined ? 1 : mix.areaHa / (block.areaHa ?? valueOf(rowsArea) ?? NaN);
  const loads = amounts.map((amount, i): Load => {
    const share = (valueOf(amount) ?? 0) / (valueOf(sprayed) ?? 1);
    return {
      number: i + 1,
      mix: amount,
      fill: i === 0 ? derive(MIX_TO_PREPARE, { U: amount, r: residual }) : amount,
      area: areas[i]!,
      rows: block.rows === undefined || !Number.isFinite(whole) ? null : block.rows * whole * share,
      products: shared.map(({ state, shares, exact }) => {
        const forResidual = i === 0 ? state.forResidual : 0;
        const mine = shares?.loads[i] ?? 0;
        return { label: state.label, exact: exact[i]!, amount: mine, forResidual, total: rounded(mine + forResidual, state.step) };
      })
    };
  });

  const rows = rowPasses(result, volume, speed, mix.outerPasses ?? 'one-sided');
  const state: LoadsState = {
    area, areaFrom, rowsArea, volume, volumeFrom: known ? 'check' : 'setting',
    tank, residual, usable, areaPerTank: derive(AREA_PER_TANK, { Tu: usable, V: volume }),
    sprayed, prepared: derive(MIX_TO_PREPARE, { U: sprayed, r: residual }), overOrdered: derive(OVER_ORDERED, { r: residual, U: sprayed }),
    fills, count, loads, partners,
    order: orderOfMixing(partners.map((p) => p.label)),
    firstWater: assumptions.take('mix.first-water'),
    rows,
    rinse: rinseOf(tank, residual),
    work: workOf({ result, mix, area, speed, count, rows, whole, assumptions }),
    assumptions: assumptions.used,
    findings: []
  };
  return { ...state, findings: ranked(loadsFindings(state, result, assumptions)) };
}

/** Products of the tank: those of the mix, else the block's own. */
export const partnersOf = (mix: Mix, own: string | undefined): readonly Partner[] => (mix.partners?.length ? mix.partners : own === undefined ? [] : [{ label: own }]);

/** Land that a treatment covers: the mix's own, else the block's, else that of its rows. */
export const treatedArea = (result: Result): Answer => areaOf(result.rung.mix ?? {}, result.block.areaHa, areaOfRows(result))[0];

function areaOfRows({ block }: Result): Answer {
  if (block.rows === undefined) return refused('no-rows', 'rows');
  if (block.rowLengthM === undefined) return refused('no-row-length', 'rowLengthM');
  return derive(ROWS_AREA, {
    n: given(block.rows, '1', 'stated', { path: 'rows' }),
    L: given(block.rowLengthM, 'm', 'measured', { path: 'rowLengthM' }),
    R: given(block.rowSpacingM, 'm', 'measured', { path: 'rowSpacingM' })
  });
}

function areaOf(mix: Mix, ofBlock: number | undefined, ofRows: Answer): readonly [Answer, LoadsState['areaFrom']] {
  if (mix.areaHa !== undefined) return [given(mix.areaHa, 'ha', 'stated', { path: 'mix.areaHa' }), 'mix'];
  if (ofBlock !== undefined) return [given(ofBlock, 'ha', 'stated', { path: 'areaHa' }), 'block'];
  return [isRefused(ofRows) ? refused('no-area', 'areaHa') : ofRows, 'rows'];
}

/** How many loads, and the mix of each. */
function fillsOf(U: Answer, Tu: Answer, fills: 'full' | 'equal'): { readonly count: Answer; readonly amounts: readonly Answer[] } {
  const count = derive(LOAD_COUNT, { U, Tu });
  if (isRefused(count)) return { count, amounts: [] };
  if (count.value > MOST_LOADS) return { count: refused('too-many-loads', 'machine.tankL', { count: count.value, most: MOST_LOADS }), amounts: [] };
  if (fills === 'equal') return { count, amounts: Array.from({ length: count.value }, () => derive(EQUAL_LOAD, { U, Nl: count })) };
  const full = derive(FULL_LOADS, { U, Tu });
  const last = derive(LAST_LOAD, { U, Nf: full, Tu });
  return { count, amounts: Array.from({ length: count.value }, (_, i) => (i < (valueOf(full) ?? 0) ? Tu : last)) };
}

interface Ground {
  readonly volume: Answer;
  readonly area: Answer;
  readonly residual: Given;
  readonly areas: readonly Answer[];
}

function partnerState(label: Label, partner: Partner, result: Result, { volume, area, residual, areas }: Ground) {
  const { unit } = label;
  const dosed = product(label, result.canopy, result.strategy);
  const strength = derive(MIX_STRENGTH[unit], { D: dosed.perHa, V: volume });
  const exact = derive(PRODUCT_FOR_AREA[unit], { D: dosed.perHa, A: area });
  const left = derive(PRODUCT_LEFT[unit], { M: strength, r: residual });
  const dose = valueOf(dosed.perHa);
  const sizes = areas.map(valueOf).filter((a) => a !== undefined);
  const shares: Portions | null = dose === undefined || sizes.length === 0 ? null : portions(dose, sizes, label.maxPerHa);
  const step = shares?.step ?? 0.001;
  const forResidual = shares ? rounded(valueOf(left) ?? 0, step) : 0;
  const state: PartnerState = {
    ...dosed,
    group: groupOf(label),
    strength,
    concentration: derive(CONCENTRATION, { V1: result.strategy.dilute ?? refused('no-dilute-water', 'strategy', { strategy: result.strategy.strategy.id }), V: volume }),
    exact,
    left,
    forArea: shares?.total ?? 0,
    forResidual,
    total: rounded((shares?.total ?? 0) + forResidual, step),
    step,
    ordered: partner.orderedAmount,
    putIn: partner.putIn ?? []
  };
  return { state, shares, exact: areas.map((A) => derive(PRODUCT_FOR_AREA[unit], { D: dosed.perHa, A })) };
}

/** Parts in which rinse water is best used: one flush leaves far more. */
const PARTS = 3;

function rinseOf(T: Given, r: Given): Rinse {
  const tenfold = derive(RINSE_TENFOLD, { r });
  const tenth = derive(RINSE_TENTH, { T });
  const w = r.value > 0 ? tenfold : tenth;
  const left = (k: number): Answer => derive(RINSE_LEFT, { r, w, k: given(k, '1', 'practice', { sources: ['habit'] }) });
  return { tenfold, tenth, water: w, once: left(1), thrice: left(PARTS) };
}
