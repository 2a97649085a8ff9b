import { SURVEY } from '../en/row/survey.ts';
import { extend } from '../language.ts';

/** Joins the survey's words to the language: to be imported for its effect by whatever speaks of it. */
extend(SURVEY);
