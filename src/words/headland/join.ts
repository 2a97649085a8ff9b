import { HEADLAND_SOURCES } from '#core/sources/headland.ts';
import { CHECK } from '../en/headland/check.ts';
import { FITTING } from '../en/headland/fitting.ts';
import { MIX } from '../en/headland/mix.ts';
import { RECORD } from '../en/headland/record.ts';
import { extend } from '../language.ts';

/** Joins the headland's words to the language: to be imported for its effect by whatever speaks of the headland. */
for (const part of [CHECK, FITTING, MIX, RECORD]) extend(part, HEADLAND_SOURCES);
