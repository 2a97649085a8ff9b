import { CANOPY_SOURCES } from '#core/sources/canopy.ts';
import { PHOTO } from '../en/row/photo.ts';
import { SURVEY } from '../en/row/survey.ts';
import { extend } from '../language.ts';

/** Joins the words of surveys and photographs to the language: to be imported for its effect by whatever speaks of them. */
for (const part of [SURVEY, PHOTO]) extend(part, CANOPY_SOURCES);
