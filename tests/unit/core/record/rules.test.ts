import { describe, expect, it } from 'vitest';
import { ALL_FIELDS, columnOf, RECORD_FIELDS, RECORD_PARTS } from '#core/record/fields.ts';
import { ASKED, checklist, CHOSEN_RULES, RULE_SETS, rulesFor, type RuleSet, type RuleSetId } from '#core/record/rules.ts';
import { CERTAINTIES } from '#core/working/answer.ts';
import { recordWords } from '#words/en/headland/record.ts';
import { sourceLine } from '#words/index.ts';
import '#words/headland/join.ts';

const sets = Object.entries(RULE_SETS) as [RuleSetId, RuleSet][];

/** What summaries of the texts say is recorded, written down apart from the lists. `?` where the authorisation must speak of it, `*` where there is any. */
const TOLD: Record<string, string[]> = {
  eu: ['product name', 'authorisation number', 'date', 'start time ?', 'dose', 'crop', 'EPPO code', 'BBCH ?', 'area treated', 'geo-referenced unit', 'type of use'],
  'us-restricted': ['product name', 'EPA registration number', 'total amount', 'location', 'area treated', 'crop', 'date', 'certified applicator name', 'certified applicator number']
};
const FIELD: Record<string, string[]> = {
  'product name': ['productName'],
  'authorisation number': ['authorisationNumber'],
  date: ['date'],
  'start time': ['startTime'],
  dose: ['productKgPerHa', 'productLPerHa'],
  crop: ['crop'],
  'EPPO code': ['cropEppo'],
  BBCH: ['bbch'],
  'area treated': ['treatedAreaHa'],
  'geo-referenced unit': ['geoUnit'],
  'type of use': ['typeOfUse'],
  'EPA registration number': ['epaRegNumber'],
  'total amount': ['productTotalKg', 'productTotalL'],
  location: ['location'],
  'certified applicator name': ['certifiedApplicator'],
  'certified applicator number': ['certificateNumber']
};

describe('what is asked for', () => {
  it.each(Object.entries(TOLD))('%s: as told, in that order', (id, told) => {
    const asked = RULE_SETS[id as RuleSetId].asks.map((a) => [a.fields, a.when]);
    expect(asked).toEqual(told.map((t) => [FIELD[t.replace(' ?', '')], t.endsWith('?') ? 'where-authorised-so' : 'always']));
  });
  it('a commercial applicator: the same, customer, time, and who is not certified if anybody', () => {
    const more = RULE_SETS['us-commercial'].asks.filter((a) => !RULE_SETS['us-restricted'].asks.some((b) => b.item === a.item));
    expect(more.map((a) => [a.item, a.when])).toEqual([
      ['customerName', 'always'],
      ['customerAddress', 'always'],
      ['startTime', 'always'],
      ['nonCertifiedApplicator', 'if-any']
    ]);
    expect(RULE_SETS['us-commercial'].asks).toHaveLength(RULE_SETS['us-restricted'].asks.length + 4);
  });
  it('periods and deadlines, and what is from memory is said to be', () => {
    const notes = (id: RuleSetId) => RULE_SETS[id].notes.map((n) => [n.code, Object.values(n.parameters)[0], n.certainty]);
    expect(notes('eu')).toContainEqual(['keep-years', 3, 'memory']);
    expect(notes('eu')).toContainEqual(['paper-within-days', 30, 'published']);
    expect(notes('us-restricted')).toContainEqual(['keep-years', 2, 'published']);
    expect(notes('us-restricted')).toContainEqual(['write-within-days', 14, 'memory']);
    expect(RULE_SETS.calibration.asks.every((a) => a.certainty === 'memory')).toBe(true);
  });
  it.each(sets)('%s: fields that such a record has, sources that there are, words for all', (id, set) => {
    expect(recordWords.rules[id]).toBeTruthy();
    for (const ask of set.asks) {
      for (const f of ask.fields) expect(Object.keys(RECORD_FIELDS[set.kind]), f).toContain(f);
      expect(recordWords.items[ask.item] ?? recordWords.fields[ask.item], ask.item).toBeTruthy();
      expect(ASKED).toContain(ask.when);
      expect(recordWords.when[ask.when]).toBeDefined();
    }
    for (const n of set.notes) expect(recordWords.notes[n.code]!(n.parameters), n.code).not.toMatch(/undefined|NaN/);
    for (const x of [...set.asks, ...set.notes]) {
      expect(CERTAINTIES).toContain(x.certainty);
      for (const s of x.sources) expect(sourceLine(s)).not.toBe(s);
    }
    expect(new Set(set.asks.map((a) => a.item)).size).toBe(set.asks.length);
  });
  it('no words are left over', () => {
    const items = new Set<string>(sets.flatMap(([, s]) => s.asks.map((a) => a.item)));
    for (const item of Object.keys(recordWords.items)) expect(items, item).toContain(item);
    expect(Object.keys(recordWords.notes).sort()).toEqual([...new Set(sets.flatMap(([, s]) => s.notes.map((n) => n.code)))].sort());
    expect(Object.keys(recordWords.rules).sort()).toEqual(sets.map(([id]) => id).sort());
  });
});

describe('a check-list', () => {
  it('any one of the fields tells a thing', () => {
    const dose = (fields: Record<string, string | number>) => checklist('eu', fields).find((c) => c.ask.item === 'dose')!.there;
    expect([dose({}), dose({ productKgPerHa: 1 }), dose({ productLPerHa: 0 }), dose({ productTotalKg: 3 })]).toEqual([false, true, true, false]);
  });
  it('has every line, told or not', () => {
    const list = checklist('us-restricted', { productName: 'Sample', date: '2031-05-12' });
    expect(list).toHaveLength(9);
    expect(list.filter((c) => c.there).map((c) => c.ask.item)).toEqual(['productName', 'date']);
  });
  it('of a calibration there is one, of a treatment those that were chosen', () => {
    expect(rulesFor('calibration', ['eu'])).toEqual(['calibration']);
    expect(rulesFor('treatment', [])).toEqual([]);
    expect(rulesFor('treatment', ['eu', 'private-standard'])).toEqual(['eu', 'private-standard']);
    for (const id of CHOSEN_RULES) expect(RULE_SETS[id].kind).toBe('treatment');
  });
  it('defers, and claims nothing', () => {
    expect(recordWords.defers).toContain('the text itself was not read');
    expect(recordWords.defers).toContain('Your authority decides');
    const all = JSON.stringify(recordWords) + Object.values(recordWords.notes).map((n) => n({}));
    expect(all).not.toMatch(/compl(y|iant|iance)|conform|certified for|legal/i);
  });
});

describe('the fields', () => {
  it('each has words, a part, and a column of its own whose name ends in the unit', () => {
    expect(Object.keys(recordWords.fields).sort()).toEqual(Object.keys(ALL_FIELDS).sort());
    for (const f of Object.values(ALL_FIELDS)) expect(RECORD_PARTS).toContain(f.part);
    const columns = Object.keys(ALL_FIELDS).map(columnOf);
    expect(new Set(columns).size).toBe(columns.length);
    const END: Record<string, string> = { m: '_m', ha: '_ha', 'L/ha': '_l_per_ha', 'kg/ha': '_kg_per_ha', 'Lprod/ha': '_l_per_ha', kg: '_kg', Lprod: '_l', L: '_l', s: '_s', bar: '_bar', 'km/h': '_km_h', 'L/min': '_l_per_min', rpm: '_rpm', degC: '_c', '%': '_pct', 'm/s': '_m_per_s' };
    for (const [id, f] of Object.entries(ALL_FIELDS)) if (f.kind === 'number' && f.unit !== '1') expect(columnOf(id).endsWith(END[f.unit]!), id).toBe(true);
  });
  it('a field of both kinds is read alike in both', () => {
    const { calibration, treatment } = RECORD_FIELDS;
    for (const [id, f] of Object.entries(calibration)) if (id in treatment) expect({ ...f, part: '' }, id).toEqual({ ...(treatment as Record<string, object>)[id], part: '' });
  });
  it('every choice has a word', () => {
    for (const f of Object.values(ALL_FIELDS)) if (f.kind === 'choice') for (const c of f.choices) expect(recordWords.choices[c], c).toBeTruthy();
  });
});
