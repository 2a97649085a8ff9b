import { source, type Source } from './source.ts';

/** Works that the comparison of strategies rests on, by id; loaded with it. */
export const COMPARISON_SOURCES = {
  'jcgm-101': source('JCGM', '2008', 'Evaluation of measurement data: supplement 1 to the guide, propagation of distributions using a Monte Carlo method', '', 'distributions of inputs, intervals of draws', 'memory', 'JCGM 101'),
  'salmon-2011': source('Salmon, J. K.; Moraes, M. A.; Dror, R. O.; Shaw, D. E.', '2011', 'Parallel random numbers: as easy as 1, 2, 3', "SC'11", 'the generator Philox 4×32 with ten rounds', 'memory'),
  'box-muller-1958': source('Box, G. E. P.; Muller, M. E.', '1958', 'A note on the generation of random normal deviates', 'Annals of Mathematical Statistics 29:610–611', 'normal numbers', 'memory'),
  'marsaglia-tsang-2000': source('Marsaglia, G.; Tsang, W. W.', '2000', 'A simple method for generating gamma variables', 'ACM Transactions on Mathematical Software 26:363–372', 'the divisor of the t distribution', 'memory'),
  'freedman-diaconis-1981': source('Freedman, D.; Diaconis, P.', '1981', 'On the histogram as a density estimator: L2 theory', 'Zeitschrift für Wahrscheinlichkeitstheorie und verwandte Gebiete 57:453–476', 'width of bins', 'memory')
} as const satisfies Record<string, Source>;
