/** What was measured at the block, in the shade, just before spraying. */
export interface Day {
  readonly temperatureC?: number;
  readonly humidityPct?: number;
  /** Mean wind, m/s. */
  readonly windMPerS?: number;
  /** Height of the block above sea level, m. Default 0. */
  readonly altitudeM?: number;
  /** True from about two hours before sunset to an hour after sunrise. */
  readonly sunLow?: boolean;
}
