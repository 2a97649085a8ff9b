import { describe, expect, it } from 'vitest';
import type { Change, Gain, Gains } from '#core/spray/advice/types.ts';
import { changePhrase, effectPhrases, stepSentence } from '#words/spray/step.ts';

const seen = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');
const gain = (value: number, clear = true): Gain => ({ value, range: [value - 0.01, value + 0.01], clear });
const gains = (more: Partial<Gains> = {}): Gains => ({ onTrees: gain(0, false), lost: gain(0, false), evenness: gain(0, false), onTreesRelative: 0, workRateRelative: 0, volumeLPerHa: 0, ...more });
const gear = (id: string) => ({ low: 'Low', high: 'High' })[id] ?? id;
const phrase = (c: Change, system: 'metric' | 'us' = 'metric') => seen(changePhrase(c, gear, system));

describe('a step in one line', () => {
  it('says what is done and what it does', () => {
    expect(seen(stepSentence({ code: 'shut', nozzles: ['L7', 'R7'] }, gains({ onTrees: gain(0.04), onTreesRelative: 0.09 }), gear, 'metric'))).toBe('Shutting L7 and R7 puts 9 % more of what is sprayed on the trees.');
  });
  it('what is not clear is not told as a gain', () => {
    expect(effectPhrases(gains({ onTrees: gain(0.04, false), onTreesRelative: 0.09 }))).toEqual(['makes no clear difference']);
  });
  it('a loss is told as one, beside a gain', () => {
    expect(effectPhrases(gains({ lost: gain(0.12), onTrees: gain(-0.05), onTreesRelative: -0.1, evenness: gain(-0.1) })).map(seen)).toEqual(['puts 10 % less of what is sprayed on the trees', 'loses 12 points less', 'spreads it less evenly']);
  });
  it('a work rate needs no model', () => {
    expect(effectPhrases(gains({ workRateRelative: 0.12 })).map(seen)).toEqual(['raises the work rate by 12 %']);
    expect(effectPhrases(gains({ evenness: null, workRateRelative: -0.2 })).map(seen)).toEqual(['lowers the work rate by 20 %']);
  });
});

describe('every change has its words', () => {
  it.each<[Change, string]>([
    [{ code: 'open', nozzles: ['L1', 'L2', 'L3'] }, 'Opening L1–L3'],
    [{ code: 'swivel', nozzles: ['L8'], fromDeg: 5, toDeg: -10 }, 'Turning L8 by 15° down'],
    [{ code: 'size', nozzles: ['L8'], from: '015', to: '02', fromClass: 'VF', toClass: 'F' }, 'Fitting 02 for 015 in L8 (fine drops for very fine)'],
    [{ code: 'pressure', fromBar: 10, toBar: 6, fromClasses: ['VF'], toClasses: ['F'] }, 'Setting 6.0 bar for 10.0 bar (fine drops for very fine)'],
    [{ code: 'pressure', fromBar: 10, toBar: 9, fromClasses: ['F'], toClasses: ['F'] }, 'Setting 9.0 bar for 10.0 bar'],
    [{ code: 'gear', from: 'high', to: 'low' }, 'Taking fan gear Low for High'],
    [{ code: 'pto', fromRpm: 540, toRpm: 450 }, 'Setting the PTO to 450 rpm for 540 rpm'],
    [{ code: 'gear-and-pto', from: 'high', to: 'low', fromRpm: 540, toRpm: 500 }, 'Taking fan gear Low at 500 rpm for High at 540 rpm'],
    [{ code: 'speed', fromKmH: 5, toKmH: 6.2 }, 'Driving 6.2 km/h for 5.0 km/h']
  ])('%j', (change, text) => expect(phrase(change)).toBe(text));
  it('in US units', () => expect(phrase({ code: 'pressure', fromBar: 10, toBar: 6.895, fromClasses: [], toClasses: [] }, 'us')).toBe('Setting 100 psi for 145 psi'));
});
