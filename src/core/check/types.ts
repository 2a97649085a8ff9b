import type { Setting } from '../sprayer/types.ts';

/** Looked at before anything is started, in the order of the walk round the machine. */
export const WALK = ['clean', 'leaks', 'nozzles-placed', 'filters', 'nozzles-brushed', 'drips', 'gauge-rest', 'gauge-scale', 'agitation', 'guards', 'pto', 'water-only', 'protection'] as const;
/** What one takes along. */
export const TOOLS = ['watch', 'tape', 'jug', 'hoses', 'gauge', 'brush', 'ribbon', 'paper'] as const;
/** How the speed runs are driven; one that is not kept makes them worth little. */
export const RUN_TERMS = ['half-tank', 'fan-on', 'in-alley', 'spraying-gear', 'rolling-start'] as const;
export const TICK_ITEMS = [...WALK, ...TOOLS, ...RUN_TERMS] as const;
export type TickItem = (typeof TICK_ITEMS)[number];

/** One item that was looked at. Items that are not named have not been looked at. */
export interface Tick {
  readonly item: TickItem;
  readonly state: 'fine' | 'fault';
}

/** One run over a marked distance. */
export interface SpeedRun {
  readonly distanceM: number;
  readonly seconds: number;
  /** Which way along the strip, so that slope and wind are met from both ends. */
  readonly direction?: 'out' | 'back';
}

/** Pressures read while the nozzles spray, unless said otherwise. */
export interface Gauges {
  /** The machine's gauge with the pump at rest. */
  readonly restBar?: number;
  /** The machine's gauge. */
  readonly readBar?: number;
  /** A gauge known to be right, at the same place. */
  readonly masterBar?: number;
  /** A gauge at the nozzle farthest from the pump. */
  readonly farBar?: number;
  /** The machine's gauge when one side is shut. */
  readonly oneSideBar?: number;
}

/**
 * What it takes to fill the tank to the mark again, after spraying on the spot for a time or along a distance. The time is
 * known before the litres are: until both are there, there is no output.
 */
export type Refill =
  | { readonly kind: 'standing'; readonly seconds?: number; readonly litres?: number; readonly litresErrorL?: number; readonly secondsError?: number }
  | { readonly kind: 'course'; readonly distanceM?: number; readonly litres?: number; readonly litresErrorL?: number };

/** What one nozzle gave into a jug. */
export interface Catch {
  readonly position: string;
  readonly litres: number;
  readonly seconds: number;
}

/** The same nozzle, or the same set, at two pressures; one after the other, so that some may still be missing. */
export interface LawTest {
  readonly firstBar?: number;
  readonly firstLPerMin?: number;
  readonly secondBar?: number;
  readonly secondLPerMin?: number;
}

/** One go at proving a setting: what was measured, and what the machine was set to then. */
export interface Round {
  /** When it was begun, ISO 8601 with time. */
  readonly at?: string;
  /** Id of the machine that was tested; unsaid, the block's. */
  readonly machine?: string;
  /** The setting that was tested. What it measures holds for this setting alone. */
  readonly setting: Setting;
  /** Forward speed on the tractor's display. */
  readonly displayKmH?: number;
  /** The distance that is marked for the next run. Default 100 m; each run keeps its own. */
  readonly courseM?: number;
  readonly runs?: readonly SpeedRun[];
  readonly gauges?: Gauges;
  readonly refill?: Refill;
  /** How long the next jug is held. Default 60 s; each catch keeps its own. */
  readonly catchS?: number;
  readonly catches?: readonly Catch[];
  readonly law?: LawTest;
}

/** How far a nozzle or a total may be off; the numbers are assumptions and the user's to change. */
export const TOLERANCES = ['strict', 'normal', 'inspection'] as const;
export type ToleranceId = (typeof TOLERANCES)[number];

/** A headland check of one rung's setting: rounds in order, the last one in hand. */
export interface Check {
  /** Default normal. */
  readonly tolerance?: ToleranceId;
  readonly ticks?: readonly Tick[];
  readonly rounds: readonly Round[];
}
