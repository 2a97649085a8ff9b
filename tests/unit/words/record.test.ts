import { describe, expect, it } from 'vitest';
import { askWord, recordField, recordGlance, recordValue } from '#words/headland/record.ts';
import { RULE_SETS } from '#core/record/rules.ts';

describe('what a record says', () => {
  it.each<[string, string | number, 'metric' | 'us', string]>([
    ['treatedAreaHa', 2.4, 'metric', '2.4 ha'],
    ['treatedAreaHa', 0.40468564224, 'us', '1 ac'],
    ['refillL', 53.4, 'metric', '53.4 L'],
    ['refillL', 3.785411784, 'us', '1 gal'],
    ['temperatureC', -4.5, 'metric', '−4.5 °C'],
    ['temperatureC', 25, 'us', '77 °F'],
    ['volumeLPerHa', 360.977, 'metric', '360.977 L/ha'],
    ['bbch', 71, 'us', '71'],
    ['preHarvestIntervalDays', 21, 'metric', '21'],
    ['typeOfUse', 'open-air', 'metric', 'in the open'],
    ['date', '2031-05-12', 'us', '2031-05-12'],
    ['crop', 'yes', 'metric', 'yes'],
    ['madeInError', 'yes', 'metric', 'yes'],
    ['pattern', 'alternate-alleys', 'metric', 'every second alley, both sides on']
  ])('%s %s in %s: %s', (field, value, system, text) => expect(recordValue(field, value, system).replaceAll('\u00a0', ' ')).toBe(text));
  it('a title rounds, the record does not', () => expect(recordGlance('volumeLPerHa', 360.977, 'metric').replaceAll('\u00a0', ' ')).toBe('361 L/ha'));
  it('fields and things asked for have names; what is no field stands for itself', () => {
    expect(recordField('cropEppo')).toBe('EPPO code of the crop');
    expect(recordField('constructor')).toBe('constructor');
    expect(RULE_SETS.eu.asks.map(askWord)).toContain('dose');
  });
});
