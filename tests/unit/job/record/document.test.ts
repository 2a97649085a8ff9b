import { describe, expect, it } from 'vitest';
import { readDocument } from '#job/read.ts';
import { writeDocument } from '#job/write.ts';
import { problemSentence } from '#words/en/problems.ts';
import { calibration, treatment } from '../../../support/records.ts';
import { sample } from '../sample.ts';

const told = (records: unknown): string[] => {
  const r = readDocument(JSON.stringify({ ...sample(), records }));
  if (r.ok) return [];
  for (const p of r.problems) expect(problemSentence(p)).not.toContain('undefined');
  return r.problems.map((p) => `${p.path} ${p.code}`);
};
const amended = (id: string, amends: string, more: object = {}) => treatment({ id, amends, reason: 'area measured again', ...more });

describe('records of a document', () => {
  it('are read and written as they stand', () => {
    const text = JSON.stringify({ ...sample(), recordRules: ['eu'], records: [calibration(), treatment(), amended('t2', 't1')] });
    const r = readDocument(text);
    if (!r.ok) throw new Error(problemSentence(r.problems[0]!));
    expect(r.document.records).toEqual([calibration(), treatment(), amended('t2', 't1')]);
    expect(readDocument(writeDocument(r.document))).toEqual(r);
  });
  it('a block that is gone does not spoil its records', () => expect(told([treatment({ block: 'felled' })])).toEqual([]));
  it('text on several lines, in any language, with any quotes', () => {
    const text = treatment({ fields: { remarks: 'Wind drehte, "böig";\nкрай 東 \u{1F333} =1+1', operator: "'t Hof" } });
    expect(told([text])).toEqual([]);
  });
  it.each<[string, unknown, string]>([
    ['a list that is none', {}, '/records wrong-type'],
    ['more than may be kept', Array.from({ length: 2001 }, (_, i) => treatment({ id: `t${i}` })), '/records too-many'],
    ['another kind', [{ ...treatment(), kind: 'harvest' }], '/records/0/kind not-a-choice'],
    ['no kind', [{ ...treatment(), kind: undefined }], '/records/0/kind missing'],
    ['no fields', [{ ...treatment(), fields: undefined }], '/records/0/fields missing'],
    ['a field of another kind of record', [treatment({ fields: { catches: 'L1 1 L 60 s' } as never })], '/records/0/fields/catches unknown-key'],
    ['a day that is none', [treatment({ fields: { date: '2031-02-29' } })], '/records/0/fields/date not-a-date'],
    ['a time that is none', [treatment({ fields: { startTime: '24:00' } })], '/records/0/fields/startTime not-a-time'],
    ['a moment without its offset', [treatment({ at: '2031-05-12T21:40:00' })], '/records/0/at not-a-moment'],
    ['a number as text', [treatment({ fields: { treatedAreaHa: '1.8' as never } })], '/records/0/fields/treatedAreaHa wrong-type'],
    ['a number out of range', [treatment({ fields: { bbch: 100 } })], '/records/0/fields/bbch out-of-range'],
    ['half a growth stage', [treatment({ fields: { bbch: 60.5 } })], '/records/0/fields/bbch not-whole'],
    ['a word that is no choice', [treatment({ fields: { typeOfUse: 'open' as never } })], '/records/0/fields/typeOfUse not-a-choice'],
    ['an empty text', [treatment({ fields: { operator: '' } })], '/records/0/fields/operator too-short'],
    ['a text without end', [treatment({ fields: { operator: 'x'.repeat(301) } })], '/records/0/fields/operator too-long'],
    ['a line break where one line is', [treatment({ fields: { operator: 'a\nb' } })], '/records/0/fields/operator unfit-characters'],
    ['what a terminal obeys', [treatment({ fields: { remarks: 'a\u001b[2J' } })], '/records/0/fields/remarks unfit-characters'],
    ['half a character', [treatment({ fields: { remarks: '\ud83c' } })], '/records/0/fields/remarks unfit-characters'],
    ['a character that was lost', [treatment({ fields: { remarks: 'M\uFFFDller' } })], '/records/0/fields/remarks unfit-characters'],
    ['an id that stands twice', [treatment(), treatment()], '/records/1/id duplicate-id'],
    ['an amendment that leads nowhere', [treatment(), amended('t2', 't9')], '/records/1/amends no-such-reference'],
    ['an amendment of itself', [amended('t2', 't2')], '/records/0/amends amends-itself'],
    ['an amendment of another kind', [calibration(), amended('t2', 'c1')], '/records/1/amends amends-other-kind'],
    ['an amendment without a reason', [treatment(), treatment({ id: 't2', amends: 't1' })], '/records/1/reason amendment-without-reason'],
    ['a reason without an amendment', [treatment({ reason: 'none' })], '/records/0/reason reason-without-amendment']
  ])('%s', (_, records, problem) => expect(told(records)).toEqual([problem]));
  it('a circle is told at every record in it, and not at one that leads into it', () =>
    expect(told([amended('a', 'c'), amended('b', 'a'), amended('c', 'b'), amended('d', 'a'), treatment()])).toEqual([
      '/records/0/amends amends-in-circle',
      '/records/1/amends amends-in-circle',
      '/records/2/amends amends-in-circle'
    ]));
  it('rules that are none', () => {
    const r = readDocument(JSON.stringify({ ...sample(), recordRules: ['eu', 'moon'] }));
    expect(r.ok || r.problems.map((p) => `${p.path} ${p.code}`)).toEqual(['/recordRules/1 not-a-choice']);
  });
});
