import type { Finding } from '../advice/finding.ts';
import type { Option } from '../sprayer/options.ts';
import type { NozzleState, SprayerState } from '../sprayer/sprayer.ts';
import type { Answer, Given } from '../working/answer.ts';
import type { Catch, Check, Gauges, LawTest, Refill, Round, SpeedRun, TickItem, ToleranceId } from './types.ts';

/** A measured value with its 95 % interval. */
export interface Measured {
  readonly value: Answer;
  /** Half of the 95 % interval, % of the value; refused where nothing tells it. */
  readonly error: Answer;
  /** In the unit of `value`; null where one of the two is refused. */
  readonly interval: { readonly low: number; readonly high: number } | null;
}

/** The list of what is looked at and taken along. A fault is the finding `check-fault-ITEM`. */
export interface WalkState {
  /** Walk round, looked at and found wanting. */
  readonly faults: readonly TickItem[];
  /** Walk round, not looked at yet. */
  readonly open: readonly TickItem[];
  /** Tools not ticked as there. */
  readonly toolsOpen: readonly TickItem[];
  /** Terms of the speed runs that were not kept, and those that nobody ticked. */
  readonly termsBroken: readonly TickItem[];
  readonly termsOpen: readonly TickItem[];
  readonly done: number;
  readonly of: number;
}

export interface RunState {
  /** Counted from 1 in the order of the document. */
  readonly number: number;
  readonly run: SpeedRun;
  readonly speed: Answer;
  /** Against the middle run of the same direction, %; null where it has no mate. */
  readonly deviation: Answer | null;
  /** Farther from its mates than the limit and than the watch explains: to be driven again. */
  readonly differs: boolean;
}

export interface DirectionState {
  /** `null`: the runs that name none. */
  readonly direction: 'out' | 'back' | null;
  readonly runs: number;
  /** All metres over all seconds of this direction. */
  readonly speed: Answer;
}

export interface SpeedState {
  readonly runs: readonly RunState[];
  readonly directions: readonly DirectionState[];
  readonly measured: Measured;
  /** Standard deviation of the runs of one direction, km/h; refused with fewer than two in each. */
  readonly spread: Answer;
  readonly standardError: Answer;
  /** Least error that the watch leaves, km/h. */
  readonly watchError: Answer;
  readonly display: Given | null;
  /** The display against the measured speed, %; above 0 it reads high. */
  readonly displayOff: Answer | null;
  /** The measured speed against that of the setting tested, %. */
  readonly settingOff: Answer;
}

/** Where the pressure that the nozzles had was read: at the far nozzle, beside the machine's gauge, on it, or nowhere (as set). */
export type PressureFrom = 'far' | 'master' | 'gauge' | 'setting';

export interface PressureState {
  readonly gauges: Gauges | null;
  /** Pressure that the nozzles had, bar. */
  readonly atNozzles: Given;
  readonly from: PressureFrom;
  /** Read at the nozzles, or beside a gauge known to be right. */
  readonly proven: boolean;
  /** The machine's gauge against the one known to be right, %. */
  readonly gaugeOff: Answer | null;
  /** Pressure lost on the way to the far nozzle, %, and the flow that this costs there, %. */
  readonly loss: Answer | null;
  readonly flowLoss: Answer | null;
  /** Change of pressure when one side is shut, %. */
  readonly oneSide: Answer | null;
}

export interface RefillState {
  /** Null before anything of it was entered. */
  readonly refill: Refill | null;
  /** Flow, L/min; along a course from the volume and the measured speed, refused without one. Refused until all is measured. */
  readonly flow: Measured;
  /** Along a course, the volume itself; null on the spot. */
  readonly volume: Measured | null;
  /** How closely a refill is to tell the output, %. */
  readonly closeness: Given;
  /** How long to spray for that closeness: seconds on the spot, metres along a course; from the tables' flow before any was measured. */
  readonly longEnough: Answer;
  /** Null before it was measured. */
  readonly isLongEnough: boolean | null;
}

export type CatchVerdict = 'fine' | 'low' | 'high' | 'unknown';

export interface CatchState {
  readonly caught: Catch;
  readonly nozzle: NozzleState;
  readonly flow: Answer;
  /** Of the table, clean water at the pressure that the nozzles had. */
  readonly nominal: Answer;
  /** Flow over nominal. */
  readonly ratio: Answer;
  /** Flow against nominal, %; above 0 the nozzle is worn, or the pressure higher than thought. */
  readonly wear: Answer;
  /** Its ratio against the mean ratio, %: sizes may differ. With one size, the same as flow against mean flow. */
  readonly deviation: Answer;
  /** What jug and watch leave of this catch, %. */
  readonly resolution: Answer;
  /** Against its mates, by the tolerance set: from their mean and from the middle one alike. */
  readonly verdict: CatchVerdict;
}

/** The limits that judge, each the user's to change, in %. */
export interface Tolerance {
  readonly id: ToleranceId;
  /** Nozzle against the mean of its mates. */
  readonly mean: Given;
  /** Nozzle, or the whole set, against the table. */
  readonly nominal: Given;
  /** Sum of the left side against the right. */
  readonly sides: Given;
}

/**
 * What the catches together say. incomplete: too few to tell · fine · evenly-low, evenly-high: all off alike, so pressure or gauge ·
 * worn-set: all high alike though the pressure was proven · one-low, one-high: one bad nozzle ·
 * hidden-pair: low and high ones that the sum hides · several-bad: change the whole set · sides-differ: left against right.
 */
export const DIAGNOSES = ['incomplete', 'fine', 'evenly-low', 'evenly-high', 'worn-set', 'one-low', 'one-high', 'hidden-pair', 'several-bad', 'sides-differ'] as const;
export type Diagnosis = (typeof DIAGNOSES)[number];

export interface CatchesState {
  /** In the order of the machine; open nozzles that were caught. */
  readonly nozzles: readonly CatchState[];
  /** Spraying positions without a catch. */
  readonly missing: readonly string[];
  /** Positions with a catch that are shut in the setting tested. */
  readonly shut: readonly string[];
  readonly meanRatio: Answer;
  readonly meanFlow: Answer;
  readonly left: Answer;
  readonly right: Answer;
  /** Left against right, % of their mean; refused where only one side sprays or was caught whole. */
  readonly sidesOff: Answer;
  /** Left and right carry the same sizes in the same places; null where places do not mirror. */
  readonly mirrored: boolean | null;
  /** Sum of all spraying nozzles; refused while one is missing. */
  readonly total: Measured;
  /** What jug and watch leave of a typical catch, %. */
  readonly resolution: Answer;
  /** The catches are too short for this tolerance set. */
  readonly tooCoarse: boolean;
  readonly tolerance: Tolerance;
  readonly diagnosis: Diagnosis;
  /** Nozzles that the diagnosis names. */
  readonly bad: readonly string[];
}

export interface LawState {
  readonly law: LawTest;
  readonly exponent: Answer;
  /** Null while the exponent is refused. */
  readonly inside: boolean | null;
}

/** A value of the setting that is not what it was when the test was made: path in the setting, for `fieldWord`. */
export type Changed = 'setting.speedKmH' | 'setting.gear' | 'setting.ptoRpm' | 'setting.pressureBar' | 'setting.sizes' | 'setting.nozzles';

/** How a test stands to a setting: made with it; taken over by the count of open nozzles, all being alike; or stale. */
export interface Standing {
  readonly stands: 'holds' | 'scaled' | 'stale';
  readonly changed: readonly Changed[];
}

/** within: may be sprayed · bad-nozzles: within, but only in the sum · adjust: beyond the closer limit · other-nozzles: beyond the wider one · unknown: something is missing. */
export type VolumeVerdict = 'within' | 'bad-nozzles' | 'adjust' | 'other-nozzles' | 'unknown';

/** What was measured for one setting, from the latest tests that hold for it. */
export interface Outcome {
  readonly speed: Measured;
  /** Index of the round that the speed comes from; null without one. */
  readonly speedRound: number | null;
  readonly flow: Measured;
  readonly flowRound: number | null;
  readonly flowFrom: 'catches' | 'standing' | 'course' | null;
  readonly flowStanding: Standing['stands'];
  /** Measured application volume; refused while speed or output is missing. */
  readonly volume: Measured;
  /** Water that the nozzle tables promise at the measured speed, before any output was measured. */
  readonly predicted: Answer;
  readonly wanted: Answer;
  /** Measured volume against the wanted water, %. */
  readonly off: Answer;
  /** Volume that the setting says, and the measured one against it, %. */
  readonly computed: Answer;
  readonly computedOff: Answer;
  readonly verdict: VolumeVerdict;
}

export interface RoundState {
  readonly index: number;
  readonly round: Round;
  /** The machine with the setting tested. */
  readonly sprayer: SprayerState;
  /** How its tests stand to the setting that is set now. */
  readonly speedStanding: Standing;
  readonly outputStanding: Standing;
  readonly pressure: PressureState;
  readonly speed: SpeedState | null;
  readonly refill: RefillState;
  readonly catches: CatchesState | null;
  readonly law: LawState | null;
  /** For the setting tested, with what earlier rounds measured and still holds for it. */
  readonly outcome: Outcome;
  readonly findings: readonly Finding[];
}

/** One way to the wanted water from what was measured. */
export interface Remedy {
  readonly kind: 'size' | 'speed' | 'pressure';
  /** What it is for: nozzles for large corrections, speed for moderate ones, pressure for fine ones. */
  readonly reach: 'large' | 'moderate' | 'fine';
  /** From the measured flow and speed; feasibility, droplet classes, work rate and remarks are in it. */
  readonly option: Option;
  /** Air per metre of row against now, %. */
  readonly airChange: Answer;
  /** Possible, of the reach that this gap asks for, and nothing has to be put right first. */
  readonly suits: boolean;
}

export interface Remedies {
  readonly target: Answer;
  /** Wanted over measured flow at the measured speed. */
  readonly ratio: Answer;
  readonly rows: readonly Remedy[];
  /** Flow error, %, that changing the pressure in proportion would leave in this case: a teaching line, never a setting. */
  readonly shortcutError: Answer;
  /** Nozzles to be put right first, the whole set where it is worn: pressure must not cover them up. */
  readonly firstReplace: readonly string[];
}

/** One line of the trail of repeats. */
export interface TrailRow {
  readonly index: number;
  readonly at: string | null;
  readonly volume: Answer;
  readonly wanted: Answer;
  readonly off: Answer;
  readonly verdict: VolumeVerdict;
  readonly diagnosis: Diagnosis | null;
}

/** Litres really used on the area against those predicted. */
export interface UsedState {
  readonly used: Answer;
  readonly predicted: Answer;
  /** % of the predicted. */
  readonly off: Answer;
  readonly findings: readonly Finding[];
}

/** A headland check worked out: what was looked at, every round, and what holds for the setting that is set now. */
export interface CheckState {
  readonly check: Check;
  readonly tolerance: Tolerance;
  readonly walk: WalkState;
  readonly rounds: readonly RoundState[];
  /** The last round; null before the first. */
  readonly current: RoundState | null;
  /** For the setting that is set now. */
  readonly outcome: Outcome;
  /** Null while nothing was measured, or where the volume is within the closer limit. */
  readonly remedies: Remedies | null;
  readonly trail: readonly TrailRow[];
  /** Null where the litres used or the area are not known. */
  readonly used: UsedState | null;
  /** Of the whole check and its last round, worst first. */
  readonly findings: readonly Finding[];
  /** Assumptions that were used, by id. */
  readonly assumptions: ReadonlyMap<string, Given>;
}
