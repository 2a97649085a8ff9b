import { checkState } from '../check/check.ts';
import type { CheckState } from '../check/state.ts';
import type { Round, Tick } from '../check/types.ts';
import { loadsState } from '../mix/loads.ts';
import type { LoadsState, PartnerState } from '../mix/state.ts';
import type { Document } from '../setting/document.ts';
import type { Result } from '../setting/result.ts';
import type { Machine, Setting } from '../sprayer/types.ts';
import { isRefused, valueOf, type Answer } from '../working/answer.ts';
import type { CalibrationFields, TreatmentFields } from './types.ts';

/*
 * A record begun from what is known: the setting, the canopy, what was measured. A draft alone: whoever makes the record looks it
 * through and fills in the rest. Nothing that is not known is guessed.
 */

/** Figures are kept to six digits: more than any machine holds, and what was typed stays as typed. */
const rounded = (v: number): number => Number(v.toPrecision(6));
const figure = (a: Answer | null | undefined): number | undefined => {
  const v = valueOf(a);
  return v === undefined ? undefined : rounded(v);
};

/** Without what is not known. */
function known<T extends object>(fields: { readonly [K in keyof T]?: T[K] | undefined }): T {
  return Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined && v !== '')) as T;
}

const lines = (list: readonly string[] | undefined): string | undefined => list?.join('\n');

/** Every position in the machine's order: `L1 iso-10625 015 open`. */
function nozzlesOf(machine: Machine, setting: Setting): string | undefined {
  const set = new Map(setting.nozzles?.map((n) => [n.position, n]));
  return lines(
    machine.nozzles.map((n) => {
      const own = set.get(n.id);
      return `${n.id} ${own?.table ?? n.table} ${own?.size ?? n.size} ${(own?.open ?? true) ? 'open' : 'shut'}`;
    })
  );
}

function common(document: Document, result: Result, setting: Setting, date: string) {
  const { block, rung, machine } = result;
  return {
    date,
    blockName: block.name,
    stage: rung.name,
    rowSpacingM: block.rowSpacingM,
    pattern: result.pattern.kind,
    widthServedM: figure(result.pass.width),
    machine: machine.name,
    ptoRpm: setting.ptoRpm,
    fanGear: machine.gears.find((g) => g.id === setting.gear)?.name ?? setting.gear,
    setSpeedKmH: setting.speedKmH,
    setPressureBar: setting.pressureBar,
    nozzles: nozzlesOf(machine, setting),
    temperatureC: document.day?.temperatureC,
    humidityPct: document.day?.humidityPct,
    windMPerS: document.day?.windMPerS
  };
}

const run = ({ distanceM, seconds, direction }: NonNullable<Round['runs']>[number]): string => `${distanceM} m ${seconds} s${direction ? ` ${direction}` : ''}`;
const tick = ({ item, state }: Tick): string => `${item} ${state}`;

/**
 * Fields of a calibration record of the round in hand; raw runs, catches and readings as they were typed, from the rounds that the figures
 * come from. A flow that was only taken over from another set of open nozzles was not measured and stays out. `date` is the day of the work.
 */
export function calibrationFields(document: Document, result: Result, date: string, state: CheckState | null = checkState(document, result)): CalibrationFields {
  const { check } = result.rung;
  const now = state?.current ?? null;
  const outcome = now?.outcome;
  const timed = state?.rounds[outcome?.speedRound ?? -1]?.round ?? now?.round;
  const ran = outcome?.flowStanding === 'holds' ? state?.rounds[outcome.flowRound ?? -1] : undefined;
  const output = ran ?? now;
  const { refill, catches, gauges } = output?.round ?? {};
  const caught = output?.catches;
  const measured = ran && outcome;
  return known<CalibrationFields>({
    ...common(document, result, now?.round.setting ?? result.setting, date),
    speedKmH: figure(outcome?.speed.value),
    displayKmH: timed?.displayKmH,
    speedRuns: lines(timed?.runs?.map(run)),
    gaugeRestBar: gauges?.restBar,
    gaugeBar: gauges?.readBar,
    masterGaugeBar: gauges?.masterBar,
    farGaugeBar: gauges?.farBar,
    refillL: refill?.litres,
    refillS: refill?.kind === 'standing' ? refill.seconds : undefined,
    refillM: refill?.kind === 'course' ? refill.distanceM : undefined,
    catches: lines(catches?.map((c) => `${c.position} ${c.litres} L ${c.seconds} s`)),
    meanNozzleLPerMin: figure(caught?.meanFlow),
    deviations: lines(caught?.nozzles.flatMap(({ caught: { position }, deviation: d }) => (d.kind === 'refused' ? [] : [`${position} ${rounded(d.value)} %`]))),
    leftLPerMin: figure(caught?.left),
    rightLPerMin: figure(caught?.right),
    flowLPerMin: figure(measured?.flow.value),
    wantedLPerHa: figure(result.water.wanted),
    volumeLPerHa: figure(measured?.volume.value),
    offWantedPct: figure(measured?.off),
    tolerance: check ? (check.tolerance ?? 'normal') : undefined,
    walkRound: lines(check?.ticks?.map(tick))
  });
}

/** The loads at the volume that was measured for this setting, where it was. */
function loadsAsMeasured(document: Document, result: Result): LoadsState {
  const outcome = checkState(document, result)?.outcome;
  return loadsState(document, result, outcome?.flowStanding === 'holds' ? { volume: outcome.volume.value } : {});
}

/** Product on the whole area: what was put in, where every load was told; else what the loads were to take. */
function totalOf({ exact, forArea, putIn }: PartnerState, loads: number): number | undefined {
  if (isRefused(exact)) return undefined;
  // A plan of no loads, for want of a tank or by a slip, takes product all the same.
  if (loads === 0) return rounded(exact.value);
  const told = new Map(putIn.map((p) => [p.load, p.amount]));
  const all = Array.from({ length: loads }, (_, i) => told.get(i + 1));
  return rounded(all.every((a) => a !== undefined) ? all.reduce((sum, a) => sum + a, 0) : forArea);
}

/**
 * Fields of a treatment's records, one for each product of the mix, for that is how they are asked for; one without a product where the
 * block has none. `date` is the day of the work.
 */
export function treatmentFields(document: Document, result: Result, date: string, state: LoadsState = loadsAsMeasured(document, result)): readonly TreatmentFields[] {
  const { block, rung } = result;
  const work = {
    ...common(document, result, result.setting, date),
    crop: block.crop,
    bbch: rung.bbch,
    treatedAreaHa: figure(state.area),
    volumeLPerHa: figure(state.volume),
    mixUsedL: rung.mix?.usedL
  };
  const { partners, loads } = state;
  if (partners.length === 0) return [known<TreatmentFields>(work)];
  return partners.map((partner) => {
    const { label } = partner;
    const dose = figure(partner.perHa);
    const total = totalOf(partner, loads.length);
    return known<TreatmentFields>({
      ...work,
      productName: label.name,
      ...(label.unit === 'kg' ? { productKgPerHa: dose, productTotalKg: total } : { productLPerHa: dose, productTotalL: total }),
      mixedWith: lines(partners.filter((p) => p !== partner).map((p) => p.label.name))
    });
  });
}
