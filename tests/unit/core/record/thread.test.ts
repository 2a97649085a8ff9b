import { describe, expect, it } from 'vitest';
import { carriedOver } from '#core/record/carry.ts';
import { rowsOf, threads } from '#core/record/thread.ts';
import { calibration, treatment } from '../../../support/records.ts';

const ids = (list: readonly { id: string }[]) => list.map((r) => r.id);

describe('threads', () => {
  it('the newest work first, by its day, then its time, then the writing', () => {
    const all = [
      treatment({ id: 'a', fields: { date: '2031-05-01' } }),
      treatment({ id: 'b', fields: { date: '2031-05-12', startTime: '06:00' } }),
      treatment({ id: 'c', fields: { date: '2031-05-12', startTime: '19:30' } }),
      calibration({ id: 'd', at: '2031-06-01T08:00:00Z', fields: {} })
    ];
    expect(threads(all).map((t) => t.first.id)).toEqual(['d', 'c', 'b', 'a']);
  });
  it('the amendment written last stands; what it said before is kept', () => {
    const all = [
      treatment({ id: 'a', fields: { crop: 'apple', treatedAreaHa: 1.8 } }),
      treatment({ id: 'b', amends: 'a', reason: 'area', at: '2031-05-13T08:00:00+02:00', fields: { crop: 'apple', treatedAreaHa: 1.6 } }),
      treatment({ id: 'c', amends: 'b', reason: 'area again, weather', at: '2031-05-14T08:00:00+02:00', fields: { crop: 'apple', treatedAreaHa: 1.7, temperatureC: 14 } })
    ];
    const [thread, ...rest] = threads(all);
    expect(rest).toEqual([]);
    expect([thread!.first.id, thread!.standing.id, ids(thread!.steps), thread!.beside]).toEqual(['a', 'c', ['a', 'b', 'c'], []]);
    expect(rowsOf(thread!, ['temperatureC', 'treatedAreaHa', 'crop', 'bbch'])).toEqual([
      { field: 'temperatureC', now: 14, earlier: [undefined] },
      { field: 'treatedAreaHa', now: 1.7, earlier: [1.8, 1.6] },
      { field: 'crop', now: 'apple', earlier: [] }
    ]);
  });
  it('what an amendment took away is shown as it was', () => {
    const all = [treatment({ id: 'a', fields: { bbch: 60 } }), treatment({ id: 'b', amends: 'a', reason: 'not seen', at: '2031-05-13T08:00:00Z', fields: {} })];
    expect(rowsOf(threads(all)[0]!, ['bbch'])).toEqual([{ field: 'bbch', now: undefined, earlier: [60] }]);
  });
  it('amended on two devices: the later stands, the other is shown beside; offsets count', () => {
    const all = [
      treatment({ id: 'a' }),
      treatment({ id: 'b', amends: 'a', reason: 'x', at: '2031-05-13T08:00:00+02:00' }),
      treatment({ id: 'c', amends: 'a', reason: 'y', at: '2031-05-13T07:00:00Z' })
    ];
    const [t] = threads(all);
    expect([t!.standing.id, ids(t!.beside)]).toEqual(['c', ['b']]);
  });
});

describe('what is carried over into a draft', () => {
  const kept = [
    treatment({ id: 'a', block: 'north', fields: { date: '2031-04-01', operator: 'A', cropEppo: 'MABSD', productName: 'One', epaRegNumber: '1-1', geoUnit: 'p1' } }),
    treatment({ id: 'b', block: 'south', fields: { date: '2031-04-20', operator: 'B', cropEppo: 'PYUCO', productName: 'Two', epaRegNumber: '2-2' } })
  ];
  it('people from the last, the place from the last of the block, numbers from the last of the product', () =>
    expect(carriedOver({ date: '2031-05-01', productName: 'Two' }, 'treatment', 'north', kept)).toEqual({
      date: '2031-05-01',
      productName: 'Two',
      operator: 'B',
      cropEppo: 'MABSD',
      geoUnit: 'p1',
      epaRegNumber: '2-2'
    }));
  it('what the draft says stands', () => expect(carriedOver({ operator: 'C' }, 'treatment', 'north', kept)['operator']).toBe('C'));
  it('nothing from what was made in error, nor from another kind', () => {
    const voided = [...kept, treatment({ id: 'c', amends: 'b', reason: 'twice', at: '2031-06-01T00:00:00Z', fields: { ...kept[1]!.fields, madeInError: 'yes' } as never })];
    expect(carriedOver({}, 'treatment', 'south', voided)).toEqual({ operator: 'A' });
    expect(carriedOver({}, 'calibration', 'north', kept)).toEqual({});
  });
});
