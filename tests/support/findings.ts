import { expect } from 'vitest';
import type { Amount, Finding } from '#core/advice/finding.ts';
import type { Unit } from '#core/quantity/units.ts';

/** A number with its unit, as a finding carries it; six decimals unless said otherwise. */
export const about = (value: number, unit: Unit, decimals = 6): Amount => ({ value: expect.closeTo(value, decimals) as number, unit });

/** All findings with one of these codes, in the order told. */
export const told = ({ findings }: { readonly findings: readonly Finding[] }, ...codes: readonly string[]): readonly Finding[] => findings.filter((f) => codes.includes(f.code));
