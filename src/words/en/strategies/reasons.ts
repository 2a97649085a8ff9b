import type { Template } from '../../words.ts';

/**
 * Why two dose indices differ, by the engine's code: `one` where one strategy counts what is substituted and the other does not, `both` where they count
 * it differently. `{one}` counts, `{other}` does not; `{from}` and `{to}` are what is substituted.
 */
export const REASON_TEMPLATES: Readonly<Record<string, { readonly one: Template; readonly both: Template }>> = {
  reference: {
    one: 'On the reference canopy of {trv} “{a}” gives {shareA} of the dose, “{b}” {shareB}',
    both: 'On the reference canopy of {trv} “{a}” gives {shareA} of the dose, “{b}” {shareB}'
  },
  law: { one: '“{one}” is a straight line that keeps {least} of the dose where nothing stands; against one in proportion that makes', both: '“{a}” and “{b}” are straight lines that keep different shares of the dose where nothing stands' },
  spacing: { one: '“{one}” counts the row spacing, {to} here and {from} of the reference; “{other}” does not', both: '“{a}” and “{b}” count the row spacing differently, {to} here and {from} of the reference' },
  height: { one: '“{one}” counts the crown height, {to} here and {from} of the reference; “{other}” does not', both: '“{a}” and “{b}” count the crown height differently, {to} here and {from} of the reference' },
  skirt: { one: '“{one}” takes the height from the ground, “{other}” does not count the {to} under the skirt', both: '“{a}” and “{b}” count the {to} under the skirt differently' },
  width: { one: '“{one}” counts the width, {to} here and {from} of the reference; “{other}” does not', both: '“{a}” and “{b}” count the width differently, {to} here and {from} of the reference' },
  outline: { one: '“{one}” counts what is inside the outline, “{other}” the box around it or no width at all', both: '“{a}” and “{b}” count the outline differently' },
  gaps: { one: '“{one}” leaves out gaps, {to} of the row is filled; “{other}” does not', both: '“{a}” and “{b}” count gaps differently' },
  faces: { one: '“{one}” counts the faces that are treated, “{other}” does not', both: '“{a}” and “{b}” count the faces that are treated differently' },
  density: { one: '“{one}” counts how dense the canopy stands, “{other}” does not', both: '“{a}” and “{b}” count by different scales how dense the canopy stands' },
  stage: { one: '“{one}” counts the growth stage, “{other}” does not', both: '“{a}” and “{b}” count the growth stage differently' }
};

/** Behind the reason: what it makes. */
export const REASON_EFFECTS = {
  more: ': {share} more by “{a}”.',
  less: ': {share} less by “{a}”.',
  unknown: '. What it makes cannot be told alone.'
} as const;
