import { ASSUMPTIONS } from './en/assumptions.ts';
import { FORMULAS } from './en/titles.ts';
import { VALIDITY } from './en/validity.ts';
import { extend } from './language.ts';

/** Joins what only workings, the Row station and the command line say: the first screen does not carry it. Imported for its effect. */
extend({ assumptions: ASSUMPTIONS, validity: VALIDITY, formulas: FORMULAS });
