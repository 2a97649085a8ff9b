import { readFile } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { dispatch } from '#cli/dispatch.ts';

const FILE = 'tests/cli/documents/loads.json';
const LONG = ['loads', FILE, '--block', 'long'];

/** Runs a verb in this process. */
async function rowtailor(args: readonly string[], input = '') {
  let [out, err] = ['', ''];
  const code = await dispatch(args, { stdin: Readable.from([Buffer.from(input)]), out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}
/** The document with one change to its first rung's mix. */
async function changed(mix: object): Promise<string> {
  const document = JSON.parse(await readFile(FILE, 'utf8')) as { blocks: { rungs: { mix: object }[] }[] };
  Object.assign(document.blocks[0]!.rungs[0]!.mix, mix);
  return JSON.stringify(document);
}
const plainText = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('loads', () => {
  it('prints the loads of every rung of a block', async () => {
    const { code, out, err } = await rowtailor(LONG);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot('golden/loads.txt');
  });
  it('holds the worked example: three loads of 1000 L on 2 ha, 2.4 kg each and what stays behind, 1.34 ha/h with the outer passes', async () => {
    const out = plainText((await rowtailor([...LONG, '--rung', 'alike'])).out);
    expect(out).toMatch(/loads +3 × 1 000 L/);
    expect(out).toMatch(/\n +2 +1 000 L +2\.00 ha +33\.3 +\S+ L +2\.400 kg\n/);
    expect(out).toMatch(/\n +1 +1 020 L +2\.00 ha +33\.3 +\S+ L +2\.448 kg\n/);
    expect(out).toMatch(/in all +4 h 28 min/);
    expect(out).toMatch(/7\.248 kg needed, 7\.000 kg at hand: 0\.248 kg short/);
  });
  it('puts the powder before the oil, whatever their order in the document', async () => {
    const { out } = await rowtailor([...LONG, '--rung', 'alike']);
    expect(out.indexOf('3  Invented powder')).toBeGreaterThan(0);
    expect(out.indexOf('4  Invented oil')).toBeGreaterThan(out.indexOf('3  Invented powder'));
  });
  it('prints one rung in US units', async () => {
    const { code, out } = await rowtailor([...LONG, '--rung', 'alike', '--units', 'us']);
    expect(code).toBe(0);
    // 6 ha are 14.83 acres, 1000 L 264 gal.
    expect(out).toMatch(/14\.83\u00a0ac/);
    expect(out).toMatch(/3 × 264\u00a0gal/);
    expect(out.split('Order of mixing')[0]).not.toMatch(/\d\u00a0(L|ha|kg)\b/);
  });
  it('prints everything with its working as JSON', async () => {
    const { code, out } = await rowtailor([...LONG, '--rung', 'alike', '--json']);
    expect(code).toBe(0);
    const { format, version, results } = JSON.parse(out);
    expect([format, version, results.length]).toEqual(['rowtailor-loads', 1, 1]);
    const [state] = results;
    expect(state.loads).toHaveLength(3);
    expect(state.loads[1].products[1]).toMatchObject({ amount: 2.4, total: 2.4, exact: { formula: 'product-for-area-kg' } });
    expect(state.volumeFrom).toBe('setting');
    expect(out).not.toMatch(/NaN|Infinity|undefined/);
  });
  it('without an area: exit code 1, the rest is still printed', async () => {
    const { code, out, err } = await rowtailor(['loads', FILE, '--block', 'bare']);
    expect(code).toBe(1);
    expect(err).toContain('Enter the block’s area, or its rows and their length.');
    expect(plainText(out)).toMatch(/usable tank +1 480 L +2\.96 ha a tank/);
  });
  it('tells what was put in wrongly', async () => {
    const put = { partners: [{ label: 'powder', putIn: [{ load: 3, amount: 3.6 }] }] };
    const { out } = await rowtailor(['loads', '-', '--block', 'long', '--rung', 'alike'], await changed(put));
    expect(plainText(out)).toContain('Invented powder, load 3: 3.600 kg instead of 2.400 kg.');
  });

  describe('refuses', () => {
    it.each([
      ['a label that is not there', { partners: [{ label: 'powdr' }] }, /mix.partners.*powdr/],
      ['a product twice', { partners: [{ label: 'powder' }, { label: 'powder' }] }, /mix.partners.*powder/],
      ['an amount out of range', { partners: [{ label: 'powder', orderedAmount: -1 }] }, /orderedAmount.*-1/],
      ['a load that is no whole number', { partners: [{ label: 'powder', putIn: [{ load: 1.5, amount: 1 }] }] }, /load.*1\.5/],
      ['a way to fill that is unknown', { fills: 'half' }, /fills.*half/],
      ['minutes out of range', { fillMinutes: 6000 }, /fillMinutes.*6\W?000/]
    ])('%s: named, exit code 1, nothing on standard output', async (_, mix, message) => {
      const { code, out, err } = await rowtailor(['loads', '-'], await changed(mix));
      expect([code, out]).toEqual([1, '']);
      expect(plainText(err)).toMatch(message);
    });
    it('wrong usage: exit code 2', async () => {
      expect((await rowtailor(['loads'])).code).toBe(2);
      expect((await rowtailor(['loads', FILE, '--rung', 'none'])).code).toBe(2);
      expect((await rowtailor(['loads', FILE, '--unit', 'us'])).code).toBe(2);
    });
    it('what cannot be read: exit code 3', async () => expect((await rowtailor(['loads', 'no-such.json'])).code).toBe(3));
  });
  it('tells of itself', async () => expect((await rowtailor(['loads', '--help'])).out).toContain('rowtailor loads FILE'));
});
