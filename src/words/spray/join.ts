import { SPRAY_SOURCES } from '#core/sources/spray.ts';
import { SPRAY_ADVICE } from '../en/spray/advice.ts';
import { LASER } from '../en/spray/laser.ts';
import { SPRAY } from '../en/spray/spray.ts';
import { extend } from '../language.ts';

/** Joins the spray model's words to the language: to be imported for its effect by whatever speaks of it. */
for (const part of [SPRAY, SPRAY_ADVICE, LASER]) extend(part, SPRAY_SOURCES);
