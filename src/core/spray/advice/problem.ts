import { advise } from '../../advice/advise.ts';
import type { Finding } from '../../advice/finding.ts';
import type { Document } from '../../setting/document.ts';
import type { Result } from '../../setting/result.ts';
import { isRefused, refused, type Refused } from '../../working/answer.ts';

/** The rung that advice is wanted for, in a document that holds nothing else: plain data, for a worker. */
export interface AdviceProblem {
  readonly document: Document;
  readonly block: string;
  readonly rung: string;
}

/** Findings on the day that say "wait": nothing is advised for spraying in such weather. */
const WEATHER: Readonly<Record<string, () => Refused>> = {
  'wind-above': () => refused('advice-too-windy', 'day.windMPerS'),
  'inversion-risk': () => refused('advice-inversion', 'day'),
  'delta-t-above': () => refused('advice-drops-dry', 'day'),
  'temperature-above': () => refused('advice-too-hot', 'day.temperatureC'),
  'humidity-below': () => refused('advice-too-dry', 'day.humidityPct')
};

/** Stops that another setting can lift: the search looks for one. All others stand whatever is set. */
const LIFTED_BY_SETTING: ReadonlySet<string> = new Set([
  'above-label-water',
  'too-concentrated',
  'droplets-too-fine',
  'pressure-outside-machine',
  'nozzle-in-canopy'
]);

const bars = (f: Finding): boolean => f.severity === 'stop' && !LIFTED_BY_SETTING.has(f.code);

/**
 * The task of looking for a better setting. Refuses by name what no setting can answer: weather that says wait, a canopy or a label that stops
 * spraying, a setting that the engine cannot tell the flow or the water of.
 */
export function adviceProblem(document: Document, result: Result): AdviceProblem | Refused {
  const { block, rung, machine, sprayer, pass } = result;
  const findings = advise(result);
  const waits = findings.find((f) => f.path === 'day' && (f.severity === 'warn' || f.severity === 'stop') && WEATHER[f.code]);
  if (waits) return WEATHER[waits.code]!();
  if (canSpray(result) === 0) return refused('no-nozzle-open', 'setting.nozzles', {});
  if (isRefused(sprayer.volume)) return sprayer.volume;
  if (isRefused(sprayer.workRate)) return sprayer.workRate;
  if (isRefused(pass.width)) return pass.width;
  if (result.canopy.outline.length === 0) return refused('no-outline', 'canopy', {});
  if (!machine.gears.some((g) => g.id === rung.setting.gear)) return refused('unknown-gear', 'setting.gear', { gear: rung.setting.gear });
  if (findings.some((f) => f.code === 'below-label-water')) return refused('advice-below-label-water', 'setting', {});
  const stop = findings.find(bars);
  if (stop) return refused('advice-stopped', stop.path ?? 'setting', {});

  const { saved: _saved, check: _check, fitting: _fitting, mix: _mix, seen: _seen, ...bare } = rung;
  const { records: _records, recordRules: _rules, ...rest } = document;
  return {
    document: {
      ...rest,
      blocks: [{ ...block, rungs: [bare] }],
      machines: [machine],
      labels: document.labels.filter((l) => l.id === block.label)
    },
    block: block.id,
    rung: rung.id
  };
}

const canSpray = ({ sprayer }: Result): number => sprayer.nozzles.filter((n) => n.spraying).length;
