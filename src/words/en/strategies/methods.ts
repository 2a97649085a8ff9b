/** Sentences of the methods text, in English. */
export const METHODS = {
  opening: (strategies: number, measurements: string): string =>
    `Water and dose were worked out with Rowtailor for one canopy (${measurements}) by ${strategies === 1 ? 'one strategy' : `${strategies} strategies`}. All values are metric; each formula stands as it was computed.`,
  canopy: (formulas: string): string => `Figures of the canopy: ${formulas}.`,
  strategy: (name: string, cited: string, formulas: string, constants: string): string => `${name}${cited}: ${formulas}${constants ? `; with ${constants}` : ''}.`,
  own: 'a formula of our own whose dimension was not checked',
  refused: (name: string): string => `${name} gives no figure on this canopy.`,
  label: (name: string, rate: string, rules: string, formulas: string): string => `The label of ${name} states ${rate}. ${rules}${formulas ? ` Product: ${formulas}.` : ''}`,
  bases: {
    'per-hectare': 'a hectare of ground',
    'per-100-l-dilute': '100 L of a dilute spray',
    'per-leaf-wall': '10 000 m² of leaf wall',
    'per-crown-height': 'a hectare and a metre of crown height',
    'per-row-volume': '10 000 m³ of tree-row volume',
    'percent-of-water': 'the reference water, in percent of it'
  },
  /** "2 kg on a hectare of ground" */
  rate: (amount: string, basis: string): string => `${amount} on ${basis}`,
  adaptations: {
    none: 'The dose was not adapted to the canopy.',
    downward: 'The dose was lowered with the dose index, never raised.',
    required: 'The dose was adapted to the dose index, up and down.',
    byItself: 'The label’s own basis follows the canopy.'
  },
  floor: (share: string): string => ` It was not lowered under ${share} of the label dose, a floor of our own.`,
  most: (amount: string): string => ` It is never above the label’s maximum of ${amount} per hectare.`,
  analytic: (errors: string, coverage: string, cited: string): string =>
    `Intervals are 95 %, by first-order propagation of the standard errors (${errors})${cited}, half an interval being ${coverage} standard errors. They hold nothing else: neither the constants nor the choice of strategy.`,
  student: (nu: number): string => `Student’s t with ${nu} degrees of freedom`,
  normal: 'of the normal distribution',
  /** "2.09 (Student's t …)" */
  coverage: (factor: string, of: string): string => `${factor} (${of})`,
  correlation: (r: string): string => `correlation of height and width ${r}`,
  draws: (draws: string, seed: string, distribution: string, cited: string): string =>
    `Beside them ${draws} canopies were drawn from the same errors, ${distribution}, with the generator Philox 4×32-10 and seed ${seed}${cited}; their intervals are the probabilistically symmetric 95 % of the draws. Canopies that cannot stand were drawn anew.`,
  drawnNormal: 'normally distributed',
  drawnStudent: (nu: number): string => `distributed as Student’s t with ${nu} degrees of freedom`,
  drawnAssumptions: (ranges: string): string => `Constants for which a range is stated were drawn with them, evenly over it: ${ranges}.`,
  range: (name: string, low: string, high: string): string => `${name} ${low} to ${high}`,
  closing: 'Values and formulas marked “from memory” have to be checked against the work before they are cited. The product label rules in every case.',
  certainties: {
    exact: 'exact',
    measured: 'measured',
    stated: 'stated by the user',
    published: 'published',
    derived: 'derived from published figures',
    practice: 'common practice',
    memory: 'from memory',
    assumed: 'assumed'
  },
  notWorks: { habit: 'common practice', arithmetic: 'by definition', geometry: 'geometry', 'sqrt-law': 'hydraulics', 'fan-laws': 'fan laws' } as Readonly<Record<string, string>>
} as const;
