import { given, type Given } from '../working/answer.ts';
import { derive } from '../working/figure.ts';
import { FLOW_LOSS, GAUGE_OFF, ONE_SIDE_OFF, PRESSURE_LOSS } from './formulas.ts';
import type { PressureFrom, PressureState } from './state.ts';
import type { Round } from './types.ts';

/**
 * The gauges while spraying. The nozzles had the pressure that was read nearest to them: at the far nozzle, else beside a gauge
 * known to be right, else on the machine's gauge, else as set.
 */
export function pressureState({ gauges, setting }: Round): PressureState {
  const bar = (value: number | undefined, path: string): Given | null => (value === undefined || !(value > 0) ? null : given(value, 'bar', 'measured', { path }));
  const read = bar(gauges?.readBar, 'check.gauges.readBar');
  const master = bar(gauges?.masterBar, 'check.gauges.masterBar');
  const far = bar(gauges?.farBar, 'check.gauges.farBar');
  const one = bar(gauges?.oneSideBar, 'check.gauges.oneSideBar');
  const set = given(setting.pressureBar, 'bar', 'stated', { path: 'setting.pressureBar' });
  const [atNozzles, from]: [Given, PressureFrom] = far ? [far, 'far'] : master ? [master, 'master'] : read ? [read, 'gauge'] : [set, 'setting'];
  const near = master ?? read;
  return {
    gauges: gauges ?? null,
    atNozzles,
    from,
    proven: far !== null || master !== null,
    gaugeOff: read && master && derive(GAUGE_OFF, { P: read, Pm: master }),
    loss: near && far && derive(PRESSURE_LOSS, { P: near, Pf: far }),
    flowLoss: near && far && derive(FLOW_LOSS, { P: near, Pf: far }),
    oneSide: read && one && derive(ONE_SIDE_OFF, { P1: one, P: read })
  };
}
