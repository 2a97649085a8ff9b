import type { Result } from '../setting/result.ts';
import { aimFindings } from './aim-rules.ts';
import { airFindings } from './air-rules.ts';
import { canopyFindings } from './canopy-rules.ts';
import { doseFindings } from './dose-rules.ts';
import { ranked, type Finding } from './finding.ts';
import { weatherFindings } from './weather-rules.ts';

const RULES: readonly ((result: Result) => Finding[])[] = [canopyFindings, aimFindings, doseFindings, airFindings, weatherFindings];

/** All findings over a result, worst first. */
export const advise = (result: Result): readonly Finding[] => ranked(RULES.flatMap((rule) => rule(result)));
