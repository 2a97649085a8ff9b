import { amount, finding, share, type Amount, type Finding } from '../advice/finding.ts';
import type { Result } from '../setting/result.ts';
import { isRefused, valueOf, type Answer } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { ofProduct, putInFindings } from './put-in.ts';
import type { LoadsState, PartnerState } from './state.ts';

const litres = (value: number): Amount => ({ value, unit: 'L' });
const perHa = (value: number): Amount => ({ value, unit: 'L/ha' });

/** Area by rows and area as stated may be so far apart before one of them is asked about. */
const AREA_APART = 0.05;
/** More products than this are seldom tried together. */
const MANY_PARTNERS = 3;
const LEAST_EFFICIENCY = 50;
const HAIR = 1e-9;

/** What to mind about the loads, in the order of the work. */
export function loadsFindings(state: LoadsState, result: Result, assumptions: Assumptions): Finding[] {
  return [
    ...areaFindings(state, result),
    ...loadFindings(state, assumptions),
    ...passFindings(state),
    ...(state.partners.length === 0 ? [finding('mix-without-product', 'note', {}, [], 'mix.partners')] : []),
    ...state.partners.flatMap((p) => partnerFindings(p, state)),
    ...mixFindings(state),
    ...putInFindings(state, assumptions)
  ];
}

function areaFindings({ area, rowsArea, volume }: LoadsState, { block }: Result): Finding[] {
  const out: Finding[] = [];
  if (isRefused(area)) out.push(finding('loads-without-area', 'stop', {}, [], 'areaHa'));
  if (isRefused(volume)) out.push(finding('loads-without-volume', 'stop', {}, [], 'setting'));
  const byRows = valueOf(rowsArea);
  const own = block.areaHa;
  if (own !== undefined && byRows !== undefined && Math.abs(byRows / own - 1) > AREA_APART)
    out.push(finding('area-disagrees', 'warn', { area: { value: own, unit: 'ha' }, rows: amount(rowsArea), off: share(Math.abs(byRows / own - 1)) }, ['neapmg-1996'], 'areaHa'));
  const most = own ?? byRows;
  if (most !== undefined && !isRefused(area) && area.value > most * (1 + AREA_APART))
    out.push(finding('area-above-block', 'warn', { area: amount(area), block: { value: most, unit: 'ha' } }, [], 'mix.areaHa'));
  return out;
}

function loadFindings(state: LoadsState, assumptions: Assumptions): Finding[] {
  const { loads, usable, fills, residual, work } = state;
  const out: Finding[] = [];
  if (isRefused(state.count) && state.count.code === 'too-many-loads') out.push(finding('too-many-loads', 'stop', { count: String(state.count.parameters.count) }, [], 'machine.tankL'));
  if (isRefused(usable)) out.push(finding('no-usable-tank', 'stop', { tank: litres(state.tank.value), residual: litres(residual.value) }, [], 'machine.residualL'));
  const last = loads.at(-1);
  const tank = valueOf(usable);
  if (last && tank !== undefined && !isRefused(last.mix) && last.mix.value < assumptions.take('mix.small-load').value * tank)
    out.push(
      fills === 'full' && loads.length > 1
        ? finding('last-load-small', 'warn', { last: amount(last.mix), equal: litres((valueOf(state.sprayed) ?? NaN) / loads.length), count: String(loads.length) }, ['habit'], 'mix.fills')
        : finding('load-small', 'note', { load: amount(last.mix), share: share(last.mix.value / tank) }, ['habit'])
    );
  if (residual.certainty === 'assumed') out.push(finding('residual-unknown', 'note', {}, ['iso-16119-3'], 'machine.residualL'));
  const efficiency = valueOf(work.efficiency);
  if (efficiency !== undefined && efficiency < LEAST_EFFICIENCY) out.push(finding('efficiency-low', 'note', { efficiency: amount(work.efficiency), turning: timeShare(work.turning, work.total), filling: timeShare(work.filling, work.total) }, ['asabe-d497']));
  return out;
}

const timeShare = (part: Answer, all: Answer): Amount => share((valueOf(part) ?? NaN) / (valueOf(all) ?? NaN));

function passFindings({ rows }: LoadsState): Finding[] {
  if (!rows || rows.passes.spare === 0 || isRefused(rows.spare)) return [];
  const values = { spare: amount(rows.spare), share: amount(rows.spareShare) };
  return [rows.outer === 'two-sided' ? finding('outer-passes-waste', 'warn', values, ['geometry'], 'mix.outerPasses') : finding('outer-passes-one-sided', 'note', values, ['geometry'], 'mix.outerPasses')];
}

function partnerFindings(p: PartnerState, { volume, residual, area }: LoadsState): Finding[] {
  const { label } = p;
  const out: Finding[] = [];
  const product = label.name;
  const v = valueOf(volume);
  if (isRefused(p.perHa)) out.push(finding('partner-without-dose', 'stop', { product, reason: p.perHa.code }, [], 'label.rate'));
  if (v !== undefined && label.minWaterLPerHa !== undefined && v < label.minWaterLPerHa * (1 - HAIR))
    out.push(finding('partner-below-water', 'stop', { product, volume: amount(volume), least: perHa(label.minWaterLPerHa) }, ['waac-concentration'], 'label.minWaterLPerHa'));
  if (v !== undefined && label.maxWaterLPerHa !== undefined && v > label.maxWaterLPerHa * (1 + HAIR))
    out.push(finding('partner-above-water', 'stop', { product, volume: amount(volume), most: perHa(label.maxWaterLPerHa) }, [], 'label.maxWaterLPerHa'));
  const cf = valueOf(p.concentration);
  if (label.maxConcentration !== undefined && cf === undefined && v !== undefined)
    out.push(finding('partner-concentration-unknown', 'note', { product, most: { value: label.maxConcentration, unit: '1' } }, [], 'strategy'));
  if (label.maxConcentration !== undefined && cf !== undefined && cf > label.maxConcentration * (1 + HAIR))
    out.push(finding('partner-too-concentrated', 'stop', { product, factor: amount(p.concentration), most: { value: label.maxConcentration, unit: '1' } }, ['waac-concentration'], 'label.maxConcentration'));
  if (label.basis === 'per-100-l-dilute' && cf !== undefined && Math.abs(cf - 1) > 0.01)
    out.push(finding('factor-counted-once', 'note', { product, factor: amount(p.concentration), strength: amount(p.strength) }, ['neapmg-1996', 'awri-2010']));
  if (p.acts.includes('capped-at-label-maximum')) out.push(finding('partner-at-maximum', 'note', { product, dose: amount(p.perHa) }, [], 'label.maxPerHa'));
  if (p.forResidual > 0) {
    const [dose, ha] = [valueOf(p.perHa), valueOf(area)];
    const most = label.maxPerHa;
    if (most !== undefined && dose !== undefined && ha !== undefined && p.total > most * ha * (1 + HAIR))
      out.push(finding('rinse-passes-maximum', 'warn', { product, left: ofProduct(p.forResidual, label), residual: amount(residual) }, ['iso-16119-3'], 'label.maxPerHa'));
  }
  return [...out, ...stockFindings(p)];
}

function stockFindings({ label, ordered, total }: PartnerState): Finding[] {
  if (ordered === undefined || total === 0) return [];
  const values = { product: label.name, ordered: ofProduct(ordered, label), total: ofProduct(total, label), off: ofProduct(Math.abs(ordered - total), label) };
  return [ordered < total * (1 - HAIR) ? finding('stock-short', 'warn', values, [], 'mix.partners') : finding('stock-suffices', 'good', values, [], 'mix.partners')];
}

function mixFindings({ partners }: LoadsState): Finding[] {
  const out: Finding[] = [];
  if (partners.length > MANY_PARTNERS) out.push(finding('many-partners', 'note', { count: String(partners.length) }, ['habit'], 'mix.partners'));
  for (const p of partners) if (partners.length > 1 && p.group === 'unknown') out.push(finding('formulation-unknown', 'note', { product: p.label.name }, ['ndsu-weed-guide'], 'label.formulation'));
  return out;
}
