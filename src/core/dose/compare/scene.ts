import { canopyState, type CanopyState } from '../../canopy/canopy.ts';
import type { Canopy } from '../../canopy/types.ts';
import { ASSUMPTIONS } from '../../setting/assumptions.ts';
import type { Document } from '../../setting/document.ts';
import type { Result } from '../../setting/result.ts';
import { Assumptions } from '../../working/assumption.ts';
import type { Answer } from '../../working/answer.ts';
import { ownStrategies } from '../own/own.ts';
import { STRATEGIES } from '../strategies.ts';
import type { Strategy } from '../strategy.ts';
import type { Label } from '../types.ts';

/** A canopy and where it stands: all that strategies are told of a block. */
export interface Standing {
  readonly canopy: Canopy;
  readonly rowSpacingM: number;
  readonly bbch: number | undefined;
  readonly faces: number;
}

/** What strategies are compared on: one block at one rung. */
export interface Scene {
  readonly standing: Standing;
  /** Those of the engine, then the user's own. */
  readonly strategies: readonly Strategy[];
  readonly label: Label | undefined;
  /** Water of the setting now. */
  readonly volume: Answer;
  readonly assumptions: Assumptions;
}

export function sceneOf(document: Document, result: Result): Scene {
  const { block, rung, pass, sprayer } = result;
  return {
    standing: { canopy: rung.canopy, rowSpacingM: block.rowSpacingM, bbch: block.evergreen ? undefined : rung.bbch, faces: pass.faces },
    strategies: [...STRATEGIES.values(), ...ownStrategies(document.ownStrategies)],
    label: document.labels.find((l) => l.id === block.label),
    volume: sprayer.volume,
    assumptions: new Assumptions(ASSUMPTIONS, document.assumptions)
  };
}

export const stateOf = (standing: Standing, assumptions: Assumptions): CanopyState => canopyState(standing.canopy, standing, assumptions);
