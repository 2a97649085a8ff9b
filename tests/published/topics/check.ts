import type { CheckState, RoundState } from '#core/check/state.ts';
import type { Catch, Round, SpeedRun } from '#core/check/types.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { given, refused, type Answer } from '#core/working/answer.ts';
import { checked } from '../../support/check.ts';
import { partsOf, read, type Call, type Inputs } from '../../support/published.ts';
import { defined, type Parts } from '../../support/sample.ts';

const none = refused('absent', '');

/** The one round that a case describes; runs are [metres or feet, seconds, direction], catches [position, litres, seconds]. */
function roundOf(i: Inputs): Omit<Round, 'setting'> {
  const feet = i.runs_ft as [number, number, SpeedRun['direction']?][] | undefined;
  const metres = i.runs_m as [number, number, SpeedRun['direction']?][] | undefined;
  const runs = (metres ?? feet)?.map(([d, seconds, direction]) => defined({ distanceM: metres ? d : d * 0.3048, seconds, direction }) as SpeedRun);
  const bar = (name: string) => read(i, name);
  const gauges = defined({ restBar: bar('rest'), readBar: bar('read'), masterBar: bar('master'), farBar: bar('far'), oneSideBar: bar('one_side') });
  const law = i.law_bar_L_per_min as [number, number, number, number] | undefined;
  const litres = read(i, 'refill');
  const litresErrorL = read(i, 'refill_error');
  const seconds = read(i, 'sprayed_time');
  const distanceM = read(i, 'sprayed');
  return defined({
    runs,
    displayKmH: read(i, 'display'),
    gauges: Object.keys(gauges).length > 0 ? gauges : undefined,
    refill:
      seconds !== undefined
        ? defined({ kind: 'standing' as const, seconds, litres, litresErrorL, secondsError: read(i, 'time_error') })
        : distanceM !== undefined
          ? defined({ kind: 'course' as const, distanceM, litres, litresErrorL })
          : undefined,
    catches: (i.catches as [string, number, number][] | undefined)?.map(([position, l, s]): Catch => ({ position, litres: l, seconds: s })),
    law: law && { firstBar: law[0], firstLPerMin: law[1], secondBar: law[2], secondLPerMin: law[3] }
  }) as Omit<Round, 'setting'>;
}

function checkOf(i: Inputs): CheckState {
  const parts: Parts = partsOf(i);
  const used = read(i, 'used');
  const areaHa = read(i, 'area');
  const nozzles = i.open ? [...(parts.setting?.nozzles ?? [])].map((n) => ({ ...n, open: (i.open as string[]).includes(n.position) })) : parts.setting?.nozzles;
  const tested = i.open_when_tested ? { nozzles: [...(parts.setting?.nozzles ?? [])].map((n) => ({ ...n, open: (i.open_when_tested as string[]).includes(n.position) })) } : null;
  const now = { ...parts.setting, ...(nozzles ? { nozzles } : {}) };
  const whole: Parts = { ...parts, setting: now, rung: { ...parts.rung, ...(used === undefined ? {} : { mix: defined({ usedL: used, areaHa }) as { usedL: number } }) } };
  return checked([tested ? { ...roundOf(i), setting: { speedKmH: 6, pressureBar: 10, gear: 'high', ptoRpm: 540, ...parts.setting, ...tested } } : roundOf(i)], whole);
}
const round = (i: Inputs): RoundState => checkOf(i).current!;
const remedy = (i: Inputs, kind: 'size' | 'speed' | 'pressure') => checkOf(i).remedies?.rows.find((r) => r.kind === kind);
const nozzle = (i: Inputs) => round(i).catches?.nozzles.find((n) => n.nozzle.position.id === i.nozzle);
const limit = (i: Inputs): Answer => {
  const a = ASSUMPTIONS.get(String(i.assumption));
  return a ? given(a.value, a.unit, a.certainty) : none;
};

export const check: Record<string, Call> = {
  speed: (i) => round(i).speed?.measured.value ?? none,
  speed_error: (i) => round(i).speed?.measured.error ?? none,
  standard_error: (i) => round(i).speed?.standardError ?? none,
  run_off: (i) => round(i).speed?.runs[Number(i.run) - 1]?.deviation ?? none,
  display_off: (i) => round(i).speed?.displayOff ?? none,
  setting_off: (i) => round(i).speed?.settingOff ?? none,
  flow: (i) => checkOf(i).outcome.flow.value,
  volume: (i) => checkOf(i).outcome.volume.value,
  volume_error: (i) => checkOf(i).outcome.volume.error,
  volume_off: (i) => checkOf(i).outcome.off,
  predicted: (i) => checkOf(i).outcome.predicted,
  refill_flow: (i) => round(i).refill.flow.value,
  refill_error: (i) => (round(i).refill.volume ?? round(i).refill.flow).error,
  course_flow: (i) => round(i).refill.flow.value,
  long_enough: (i) => round(i).refill.longEnough,
  nozzle_flow: (i) => nozzle(i)?.flow ?? none,
  nozzle_nominal: (i) => nozzle(i)?.nominal ?? none,
  nozzle_ratio: (i) => nozzle(i)?.ratio ?? none,
  nozzle_off: (i) => nozzle(i)?.deviation ?? none,
  nozzle_wear: (i) => nozzle(i)?.wear ?? none,
  nozzle_resolution: (i) => nozzle(i)?.resolution ?? none,
  catch_total: (i) => round(i).catches?.total.value ?? none,
  sides_off: (i) => round(i).catches?.sidesOff ?? none,
  gauge_off: (i) => round(i).pressure.gaugeOff ?? none,
  pressure_loss: (i) => round(i).pressure.loss ?? none,
  flow_loss: (i) => round(i).pressure.flowLoss ?? none,
  one_side: (i) => round(i).pressure.oneSide ?? none,
  exponent: (i) => round(i).law?.exponent ?? none,
  new_speed: (i) => remedy(i, 'speed')?.option.speed ?? none,
  new_pressure: (i) => remedy(i, 'pressure')?.option.pressure ?? none,
  air_change: (i) => remedy(i, 'speed')?.airChange ?? none,
  flow_ratio: (i) => checkOf(i).remedies?.ratio ?? none,
  shortcut_error: (i) => checkOf(i).remedies?.shortcutError ?? none,
  used_predicted: (i) => checkOf(i).used?.predicted ?? none,
  used_off: (i) => checkOf(i).used?.off ?? none,
  limit
};
