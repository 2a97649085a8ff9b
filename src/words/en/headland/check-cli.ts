import type { CatchVerdict, Diagnosis, PressureFrom, Remedy, VolumeVerdict } from '#core/check/state.ts';
import type { ToleranceId } from '#core/check/types.ts';

/** What the command line says around the figures of a headland check. */
export const checkCli = {
  usage: `rowtailor check FILE [--block ID] [--rung ID] [--units SYSTEM] [--json]

Works out the headland check of every rung that has one, in the order of the file; FILE - reads standard input.
For each: walk round, every round with speed, pressure, catches and refill; measured against wanted water for the
setting as it is now; the ways to correct it; the trail of rounds; findings, worst first.

  --block ID    only the block with this id
  --rung ID     only the rungs with this id
  --units       metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --json        the whole check with the working of every figure, in the engine's units:
                {"format": "rowtailor-check", "version": 1, "checks": [...]}, one per rung with a check
  -h, --help    this text

Exit codes
  0  done
  1  the file was refused, no rung of it has a check, or the measured water could not be worked out
  2  wrong usage, or no such block or rung
  3  the file cannot be read, or is no JSON
`,
  none: (file: string) => `${file}: no rung has a headland check. Enter one as rungs[].check, or on the Headland screen.`,
  headings: {
    walk: 'Walk round',
    round: (number: number, at: string) => `Round ${number}${at === '' ? '' : `, ${at}`}`,
    speed: 'Speed',
    pressure: 'Pressure',
    catches: 'Catches',
    refill: 'Refill',
    law: 'Flow and pressure',
    result: 'Measured against wanted, for the setting as it is now',
    remedies: (target: string) => `Ways to the wanted ${target}`,
    trail: 'Trail',
    used: 'Litres used'
  },
  lookedAt: (done: number, of: number) => `${done} of ${of} points looked at`,
  open: 'not looked at',
  faults: 'faults',
  notAlong: 'not along',
  termsBroken: 'runs driven otherwise',
  setting: (speed: string, pressure: string, open: number) => `set to ${speed}, ${pressure}, ${open} nozzles open`,
  run: (number: number) => `run ${number}`,
  direction: { out: 'out', back: 'back' },
  differs: 'differs',
  speed: 'speed',
  spread: 'spread of runs',
  display: 'display',
  against: (off: string) => `${off} against the watch`,
  againstSet: (off: string) => `${off} against the setting`,
  atNozzles: 'at the nozzles',
  from: { far: 'read at the far nozzle', master: 'read on the gauge known to be right', gauge: 'read on the machine’s gauge', setting: 'as set, not read' } satisfies Record<PressureFrom, string>,
  gaugeOff: 'machine’s gauge',
  loss: 'lost on the way',
  flowLoss: (loss: string) => `${loss} of the flow`,
  oneSide: 'one side shut',
  columns: { nozzle: 'nozzle', size: 'size', litres: 'caught', time: 'time', flow: 'flow', table: 'table', wear: 'to table', off: 'to mean', error: 'error', verdict: 'verdict' },
  verdicts: { fine: 'fine', low: 'low', high: 'high', unknown: 'unknown' } satisfies Record<CatchVerdict, string>,
  left: 'left',
  right: 'right',
  sides: (off: string) => `left ${off} against right`,
  total: 'all together',
  tolerance: (id: string, mean: string, nominal: string, sides: string) => `tolerance ${id}: ${mean} to the mean, ${nominal} to the table, ${sides} left to right`,
  tolerances: { strict: 'strict', normal: 'normal', inspection: 'inspection' } satisfies Record<ToleranceId, string>,
  diagnosis: {
    incomplete: 'not all caught yet',
    fine: 'nozzles fine',
    'evenly-low': 'all low alike',
    'evenly-high': 'all high alike',
    'worn-set': 'set worn',
    'one-low': 'one nozzle low',
    'one-high': 'one nozzle high',
    'hidden-pair': 'a low and a high one hide each other',
    'several-bad': 'several out of tolerance',
    'sides-differ': 'left and right differ'
  } satisfies Record<Diagnosis, string>,
  flow: 'flow',
  courseVolume: 'volume over the course',
  longEnough: (wanted: string) => `long enough for ±${wanted}`,
  exponent: 'exponent',
  measuredSpeed: 'measured speed',
  measuredFlow: 'measured flow',
  measured: 'measured water',
  predicted: 'water by the tables at that speed',
  wanted: 'wanted water',
  off: 'off',
  setSays: 'the setting says',
  ofRound: (number: number) => `of round ${number}`,
  scaled: 'by the count of open nozzles',
  verdict: { within: 'close enough', 'bad-nozzles': 'litres right, nozzles not', adjust: 'adjust', 'other-nozzles': 'too far for pressure', unknown: 'not known yet' } satisfies Record<VolumeVerdict, string>,
  remedy: { size: 'nozzles', speed: 'speed', pressure: 'pressure' } satisfies Record<Remedy['kind'], string>,
  reach: { large: 'for large corrections', moderate: 'for moderate ones', fine: 'for fine ones' } satisfies Record<Remedy['reach'], string>,
  remedyColumns: { speed: 'speed', pressure: 'pressure', drops: 'drops', air: 'air per metre', rate: 'work rate' },
  suits: 'suits this gap',
  possible: 'possible',
  notPossible: 'not possible',
  change: (nozzles: string, from: string, to: string) => `${nozzles}: from ${from} to ${to}`,
  firstReplace: (nozzles: string) => `First put right: ${nozzles}.`,
  shortcut: (error: string) => `Changing the pressure in proportion to the flow would leave the flow ${error} off: flow goes with the square root.`,
  again: 'Set one of them, then check again.',
  used: 'litres used',
  predictedUse: 'litres predicted',
  caution: 'Clean water only, guards on, nobody between nozzle and jug with the fan on. The label and local law rule over every figure here.'
} as const;
