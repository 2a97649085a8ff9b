import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { dispatch } from '#cli/dispatch.ts';
import { describe, expect, it } from 'vitest';
import { ROOT, rowtailor as asProcess, type Ended } from '../support/command.ts';

const BENCH = 'demo-data/lower-bench.json';
const GROVE = 'demo-data/citrus-globes.json';

/** Runs a verb in this process. */
async function rowtailor(args: readonly string[], input = ''): Promise<Ended> {
  let [out, err] = ['', ''];
  const code = await dispatch(args, { stdin: Readable.from([Buffer.from(input)]), out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}
const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

interface Doc {
  blocks: { id: string; rungs: { id: string; setting: Record<string, unknown>; check?: { rounds: Record<string, unknown>[] } }[] }[];
}
/** The bench orchard, changed by hand, as text. */
async function changed(change: (rung: Doc['blocks'][number]['rungs'][number], doc: Doc) => void): Promise<string> {
  const doc = JSON.parse(await readFile(join(ROOT, BENCH), 'utf8')) as Doc;
  change(doc.blocks[0]!.rungs.find((r) => r.id === 'petal-fall')!, doc);
  return JSON.stringify(doc);
}

describe('check', () => {
  it('prints the check of every rung that has one, in metric units; says which stages have none', async () => {
    const { code, out, err } = await rowtailor(['check', BENCH]);
    expect(code).toBe(0);
    expect(err).toContain('Lower bench, Full leaf: Petal fall was checked, Full leaf was not');
    await expect(out).toMatchFileSnapshot('golden/lower-bench-check.txt');
  });

  it('prints in US units', async () => {
    const { code, out } = await rowtailor(['check', GROVE, '--rung', 'fruit-fill', '--units', 'us']);
    expect(code).toBe(0);
    expect(out).not.toMatch(/ bar|km\/h|L\/ha|NaN|undefined|\{\w+\}/);
    await expect(out).toMatchFileSnapshot('golden/citrus-globes-check-us.txt');
  });

  it('prints the whole check with its working as JSON', async () => {
    const { code, out } = await rowtailor(['check', GROVE, '--json']);
    expect(code).toBe(0);
    expect(out).not.toMatch(/Infinity|NaN|e\+308|undefined|\[object/);
    const { format, version, checks } = JSON.parse(out);
    expect([format, version, checks.length]).toEqual(['rowtailor-check', 1, 1]);
    const { outcome, rounds } = checks[0];
    // By hand: 9.953 gal/min on 22 ft at 800 ft in 302.8 s, which is 1.8013 mph: 495·Q/(v·W) gal/ac, in L/ha.
    expect(outcome.volume.value.value / 9.353956).toBeCloseTo((495 * 9.9534) / (1.8013 * 22), 1);
    expect(outcome.volume.value.formula).toBe('application-volume');
    expect(outcome.volume.value.inputs.Q.inputs.L1.inputs.U.path).toBe('check.catches.litres');
    expect(rounds.map((r: { catches: { diagnosis: string } }) => r.catches.diagnosis)).toEqual(['hidden-pair', 'fine']);
    expect(rounds[0].catches.bad).toEqual(['L6', 'R9']);
  });

  it('is a process that reads standard input for -', async () => {
    const text = await readFile(join(ROOT, BENCH), 'utf8');
    const piped = await asProcess(['check', '-', '--block', 'lower-bench'], text);
    expect(piped).toEqual(await rowtailor(['check', BENCH, '--block', 'lower-bench']));
  });

  it('prints remedies where the water is off, and warns of pressure where a nozzle is', async () => {
    // A slow pump: every catch a fifth smaller.
    const text = await changed((rung) => {
      for (const round of rung.check!.rounds) for (const c of (round.catches ?? []) as { litres: number }[]) c.litres = Math.round(c.litres * 80) / 100;
    });
    const { code, out } = await rowtailor(['check', '-'], text);
    expect(code).toBe(0);
    const said = plain(out);
    expect(said).toContain('Ways to the wanted 293 L/ha');
    expect(said).toMatch(/nozzles +for large corrections/);
    expect(said).toMatch(/speed +for moderate ones.*suits this gap/);
    expect(said).toMatch(/pressure +for fine ones.*not possible/);
    expect(said).toContain('Changing the pressure in proportion to the flow would leave the flow');
    expect(said).toContain('All nozzles are low alike, 20 % below the table');
  });

  it('marks a test stale when the setting has changed since', async () => {
    const text = await changed((rung) => (rung.setting.pressureBar = 7));
    const { code, out, err } = await rowtailor(['check', '-'], text);
    expect(code).toBe(1);
    expect(plain(out)).toContain('The output was measured with other pressure. Measure it again.');
    expect(err).toContain('The output was measured with another setting. Measure it again.');
  });

  it('tells its usage', async () => {
    const { code, out, err } = await rowtailor(['check', '--help']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('rowtailor check FILE');
    expect((await rowtailor(['--help'])).out).toContain('check FILE');
  });

  describe('refuses', () => {
    it('a file without any check', async () => {
      const { code, out, err } = await rowtailor(['check', 'demo-data/cherry-wall.json']);
      expect([code, out]).toEqual([1, '']);
      expect(err).toContain('no rung has a headland check');
    });
    it('a rung without one', async () => {
      const { code, err } = await rowtailor(['check', BENCH, '--rung', 'mouse-ear']);
      expect(code).toBe(1);
      expect(err).toContain('no rung has a headland check');
    });
    it('to answer where nothing was measured yet, and prints the rest', async () => {
      const text = await changed((rung) => (rung.check = { rounds: [] }));
      const { code, out, err } = await rowtailor(['check', '-'], text);
      expect(code).toBe(1);
      expect(err).toContain('Lower bench, Petal fall: some figures could not be worked out. No output was measured.');
      expect(plain(out)).toContain('wanted water      293 L/ha');
    });
    it.each([
      ['a catch at a position that is not there', (round: Record<string, unknown>) => (round.catches = [{ position: 'L99', litres: 1, seconds: 60 }]), 'L99'],
      ['a run of no length', (round: Record<string, unknown>) => (round.runs = [{ distanceM: 0, seconds: 60 }]), 'distanceM is 0'],
      ['a run of no time', (round: Record<string, unknown>) => (round.runs = [{ distanceM: 100, seconds: -3 }]), 'seconds is -3'],
      ['a nozzle caught twice', (round: Record<string, unknown>) => (round.catches = [{ position: 'L1', litres: 1, seconds: 60 }, { position: 'L1', litres: 1, seconds: 60 }]), 'L1'],
      ['a round without a setting', (round: Record<string, unknown>) => delete round.setting, 'setting'],
      ['a field that is not there', (round: Record<string, unknown>) => (round.sprung = 1), 'sprung']
    ])('%s', async (_, change, named) => {
      const text = await changed((rung) => change(rung.check!.rounds[0]!));
      const { code, out, err } = await rowtailor(['check', '-'], text);
      expect([code, out]).toEqual([1, '']);
      expect(plain(err)).toContain(named);
    });
    it.each([
      ['no file', ['check'], 'Name one document'],
      ['other units', ['check', BENCH, '--units', 'cubits'], 'it must be metric, metric-psi, metric-mph, acres, imperial or us'],
      ['a block that is not there', ['check', BENCH, '--block', 'nowhere'], 'Blocks: lower-bench, upper-shelf.'],
      ['an option that is not there', ['check', BENCH, '--loud'], "'--loud'"]
    ])('%s: exit code 2', async (_, args, message) => {
      const { code, out, err } = await rowtailor(args);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain(message);
      if (args.length > 1) return;
      expect(err).toContain('rowtailor check --help');
    });
    it('what cannot be read: exit code 3', async () => expect((await rowtailor(['check', '-'], 'spray on Monday')).code).toBe(3));
  });
});
