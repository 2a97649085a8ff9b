import { SEASON_SOURCES } from '#core/sources/season.ts';
import '../deep.ts';
import '../headland/join.ts';
import { SEASON } from '../en/season/season.ts';
import { extend } from '../language.ts';

/** Joins the season's words and works to the language: to be imported for its effect by whatever speaks of it. Loads are among its words. */
extend(SEASON, SEASON_SOURCES);
