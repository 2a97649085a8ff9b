import { describe, expect, test } from 'vitest';
import { formulas } from '#core/working/formula.ts';
import { formulasUnder, inUnit, load, type Call } from '../support/published.ts';
import { aim } from './topics/aim.ts';
import { air } from './topics/air.ts';
import { canopy } from './topics/canopy.ts';
import { check } from './topics/check.ts';
import { dose } from './topics/dose.ts';
import { mix } from './topics/mix.ts';
import { fitting } from './topics/fitting.ts';
import { spray } from './topics/spray.ts';
import { sprayer } from './topics/sprayer.ts';
import { strategies } from './topics/strategies.ts';
import { survey } from './topics/survey.ts';
import { units } from './topics/units.ts';
import { weather } from './topics/weather.ts';

/** What others say comes out, as data in `*.json` beside this file, against the engine. */
const TOPICS: Record<string, Record<string, Call>> = { aim, air, canopy, check, dose, fitting, mix, spray, sprayer, strategies, survey, units, weather };

const reached = new Set<string>();

describe.each(Object.entries(TOPICS))('%s', (topic, calls) => {
  const cases = load(topic);
  const asked = new Set<string>();

  test.each(cases.map((c) => [`${c.id}: ${c.what}`, c] as const))('%s', (_, c) => {
    expect(c.source).not.toBe('');
    for (const [name, { value, tolerance, unit }] of Object.entries(c.expected)) {
      const call = calls[name];
      if (!call) throw new Error(`nothing answers to ${name}`);
      asked.add(name);
      const answer = call(c.inputs);
      formulasUnder(answer, reached);
      const found = inUnit(answer, unit);
      expect(Number.isFinite(found), `${name} is a number`).toBe(true);
      expect(Math.abs(found - value), `${name}: ${found} ${unit}, expected ${value} ± ${tolerance}`).toBeLessThanOrEqual(tolerance + 1e-12);
    }
  });
  test('has cases', () => expect(cases.length).toBeGreaterThan(0));
});

test('every formula of the engine has met the outside', () => {
  // Where tests share a process, one of another file has declared a formula of its own.
  const missing = [...formulas().keys()].filter((id) => !reached.has(id) && !id.startsWith('test-'));
  expect(missing).toEqual([]);
});
