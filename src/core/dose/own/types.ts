/** Characters of a formula. */
export const LONGEST_FORMULA = 300;

/** A strategy of the user's own, as it stands in a document: formulas over the canopy's figures by their symbols. */
export interface OwnStrategy {
  readonly id: string;
  readonly name: string;
  /** Dose against the label's, before any cap or floor. */
  readonly index: string;
  /** Water, L/ha. */
  readonly water?: string;
  /** Whether that water is a dilute spray (to the point of run-off), or one meant for the sprayer as it is. Default dilute. */
  readonly waterKind?: 'dilute' | 'applied';
  readonly note?: string;
}
