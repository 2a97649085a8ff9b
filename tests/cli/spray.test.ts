import { readFile } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { dispatch } from '#cli/dispatch.ts';
import { adviceLines } from '#cli/spray-advice.ts';
import { inLine, part } from '#cli/spray-figures.ts';
import { layers } from '#cli/spray-layers.ts';
import { finding } from '#core/advice/finding.ts';
import type { SprayAdvice } from '#core/spray/advice/types.ts';
import { FATES, type SprayBalance } from '#core/spray/types.ts';
import '#words/spray/join.ts';
import { result, setting } from '../support/sample.ts';

const demo = (name: string): string => fileURLToPath(new URL(`../../demo-data/${name}.json`, import.meta.url));
const CHERRY = demo('cherry-wall');
/** Runs a verb in this process. */
async function rowtailor(args: readonly string[], input = '') {
  let [out, err] = ['', ''];
  const code = await dispatch(args, { stdin: Readable.from([Buffer.from(input)]), out: (text) => (out += text), err: (text) => (err += text) });
  return { code, out, err };
}
/** The cherry document at one rung, changed. */
async function changed(change: (rung: any, block: any, document: any) => void): Promise<string> {
  const document = JSON.parse(await readFile(CHERRY, 'utf8'));
  const block = document.blocks[0];
  block.rungs = block.rungs.filter((r: { id: string }) => r.id === 'green-fruit');
  change(block.rungs[0], block, document);
  return JSON.stringify(document);
}
const plainly = (text: string): string => text.replace(/[\s\u00a0\u202f]+/g, ' ');
const sectionOf = (text: string, heading: string): string => new RegExp(`\\n${heading}[^\\n]*\\n((?:  .*\\n)+)`).exec(text)![1]!;

describe('spray', () => {
  let text = '';
  let json: any;
  beforeAll(async () => {
    text = (await rowtailor(['spray', CHERRY, '--rung', 'green-fruit'])).out;
    json = JSON.parse((await rowtailor(['spray', CHERRY, '--rung', 'green-fruit', '--json'])).out);
  }, 120_000);

  it('prints balance, profile, air, advice, limits and assumptions of a rung', async () => {
    for (const heading of ['Where the spray goes', 'By nozzle', 'Deposit on leaf by height', 'Air where it meets', 'What the model was told', 'What moves the share', 'Settings that do better', 'Limits', 'Assumptions used']) expect(text).toContain(`\n${heading}`);
    // What the search finds is told by its JSON below, and its lines by an advice made by hand.
    await expect(text.replace(/(\nSettings that do better[^\n]*\n)(?:  .*\n)+/, '$1')).toMatchFileSnapshot('golden/spray-green-fruit.txt');
  });

  it('prints them in US units', { timeout: 120_000 }, async () => {
    const { code, out, err } = await rowtailor(['spray', CHERRY, '--rung', 'green-fruit', '--units', 'us']);
    expect([code, err]).toEqual([0, '']);
    expect(out).not.toMatch(/\d\u00a0(m|m\/s|L\/ha|L\/min|km\/h|bar|ha\/h|m³\/h)(?=\s|,|;|\.|:|\))/);
    expect(plainly(out)).toMatch(/\d ft .*\d mph.*gal\/ac/);
  });

  it('writes the balance, its band and all that the model was told as JSON', () => {
    expect([json.format, json.version, json.results.length]).toEqual(['rowtailor-spray', 1, 1]);
    const [{ rung, balance, band, case: told, assumptions, advice, limits, air }] = json.results;
    expect(rung.id).toBe('green-fruit');
    const shares = Object.values(balance.shares as Record<string, number>);
    expect(shares).toHaveLength(FATES.length);
    expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 3);
    expect(band.onTrees[0]).toBeLessThanOrEqual(balance.onTrees - 0.15);
    expect(band.onTrees[1]).toBeGreaterThanOrEqual(balance.onTrees + 0.15);
    expect(told).toMatchObject({ outlet: { kind: 'tower' }, canopy: { ladM2PerM3: 2.4 }, constants: { projection: 0.32 } });
    expect(told.nozzles).toHaveLength(balance.perNozzle.length);
    expect(assumptions['spray.projection']).toMatchObject({ value: 0.32, certainty: 'derived' });
    expect(air.perMetre.unit).toBe('m3/m');
    expect(advice.plans.length).toBeGreaterThan(0);
    expect(limits.length).toBeGreaterThan(5);
  });

  it('prints the figures of its JSON', () => {
    const { balance, band, advice } = json.results[0];
    const percent = (share: number): string => (share * 100).toFixed(0);
    expect(plainly(text)).toContain(`on the trees ${percent(balance.onTrees)} % ${percent(band.onTrees[0])}–${percent(band.onTrees[1])} %`);
    expect(plainly(text)).toContain(`unevenness by height (CV) ${percent(balance.cv)} %`);
    const nozzles = sectionOf(text, 'By nozzle').trimEnd().split('\n').slice(1);
    expect(nozzles.map((l) => l.trim().split(/\s/)[0])).toEqual(balance.perNozzle.map((n: { position: string }) => n.position));
    const front = sectionOf(text, 'Settings that do better').split('\n').filter((l) => /^ (today|\(\d\)) .* ha\/h/.test(plainly(l)));
    expect(front).toHaveLength(1 + advice.plans.length);
  });

  it('says beside the figures what must be said, and shows nothing that the model cannot tell', () => {
    const said = plainly(text);
    for (const must of ['It ranks settings. It predicts neither residues nor legal drift', 'at least ±15 points', 'air speed by ±15 to 25 %', 'No bounce, no run-off', 'no gusts', 'Rule of thumb, from memory', 'is no drift dose and has no distance', 'air carried along 3.00 times', 'What less air saves is understated', 'Droplet classes compare nozzles'])
      expect(said).toContain(must);
    expect(sectionOf(text, 'Assumptions used')).toMatch(/Wind across the rows .*assumed/);
    expect(sectionOf(text, 'What moves the share')).not.toMatch(/wind/i);
    expect(JSON.stringify(json.results[0].band.runs)).not.toMatch(/wind/);
    expect(json.results[0].band.runs.length).toBeGreaterThan(5);
    expect(said.match(/validated/g)!.length).toBe(said.match(/[Nn]othing (in it|here) was validated/g)!.length);
  });

  it('takes the user’s own constant and the day’s delta T, and says so', { timeout: 120_000 }, async () => {
    const input = await changed((_rung, _block, document) => {
      document.assumptions = { ...document.assumptions, 'spray.projection': 0.2 };
    });
    const { out } = await rowtailor(['spray', '-', '--json'], input);
    const [{ balance, band, assumptions, case: told }] = JSON.parse(out).results;
    expect(assumptions['spray.projection']).toMatchObject({ value: 0.2, certainty: 'stated' });
    expect(balance.onTrees).toBeLessThan(json.results[0].balance.onTrees);
    expect(band.runs.map((r: { assumption: string }) => r.assumption)).not.toContain('spray.projection');
    expect(assumptions['spray.delta-t'].value).toBe(told.constants.deltaTK);
    expect(assumptions['spray.delta-t'].value).not.toBe(5);
  });

  it('refuses by name what the model cannot be told, and still prints the others', { timeout: 120_000 }, async () => {
    const input = await changed((rung, block) => {
      block.rungs = [{ ...rung, id: 'shut', name: 'Shut', setting: { ...rung.setting, nozzles: [] } }, rung];
      block.rungs[0].setting.nozzles = ['L', 'R'].flatMap((side) => Array.from({ length: 10 }, (_, i) => ({ position: `${side}${i + 1}`, open: false })));
    });
    const { code, out, err } = await rowtailor(['spray', '-'], input);
    expect(code).toBe(1);
    expect(err).toMatch(/^East wall, Shut: .*No nozzle is open\.\n$/);
    expect(out.match(/^Where the spray goes/gm)).toHaveLength(1);
    const written = await rowtailor(['spray', '-', '--rung', 'shut', '--json'], input);
    expect(written.code).toBe(1);
    expect(JSON.parse(written.out).results[0].balance).toMatchObject({ refused: 'no-nozzle-open' });
  });

  it('refuses rows that meet', async () => {
    const input = await changed((rung, block) => {
      rung.canopy = { ...rung.canopy, widthM: 3.2, profile: undefined };
      block.rowSpacingM = 3.2;
    });
    const { code, err } = await rowtailor(['spray', '-'], input);
    expect(code).toBe(1);
    expect(err).toContain('no alley is left to spray from');
  });

  it('tells why no setting is advised, with the balance all the same', { timeout: 120_000 }, async () => {
    const { code, out, err } = await rowtailor(['spray', '-'], await changed((_rung, _block, document) => (document.day = { ...document.day, windMPerS: 9 })));
    expect([code, err]).toEqual([0, '']);
    expect(plainly(sectionOf(out, 'Settings that do better'))).toContain('It is too windy to spray');
    expect(out).toContain('By nozzle');
  });

  it.each([
    [['spray'], 2, 'Name one document'],
    [['spray', CHERRY, '--units', 'furlongs'], 2, '--units is "furlongs"'],
    [['spray', CHERRY, '--rung', 'nowhere'], 2, 'no rung "nowhere"'],
    [['spray', CHERRY, '--fast'], 2, '--fast'],
    [['spray', 'absent.json'], 3, 'there is no such file']
  ])('ends as the other verbs do: %j', async (args, exit, message) => {
    const { code, out, err } = await rowtailor(args);
    expect([code, out]).toEqual([exit, '']);
    expect(err).toContain(message);
  });
  it('helps', async () => {
    const { code, out } = await rowtailor(['spray', '--help']);
    expect(code).toBe(0);
    for (const word of ['rowtailor spray FILE', 'rowtailor-spray', 'neither residues nor legal drift']) expect(out).toContain(word);
  });
});

describe('the lines of an advice', () => {
  const objectives = { onTrees: 0.438, cv: 0.154, lost: 0.386, workRateHaPerH: 2.28 };
  const gain = (value: number, clear: boolean) => ({ value, range: [value - 0.01, value + 0.01] as const, clear });
  const gains = { onTrees: gain(0.04, true), lost: gain(0.09, true), evenness: gain(-0.005, false), onTreesRelative: 0.0913, workRateRelative: 0, volumeLPerHa: -45 };
  const none = { ...gains, onTrees: gain(0.001, false), lost: gain(0.002, false), onTreesRelative: 0.002, volumeLPerHa: 0 };
  const today = { setting: setting(), objectives, volumeLPerHa: 361, droplets: ['F' as const], airRatio: 1.2, beaten: true };
  const advice: SprayAdvice = {
    today,
    plans: [
      {
        ...today,
        objectives: { ...objectives, onTrees: 0.478, lost: 0.296 },
        volumeLPerHa: 316,
        names: ['most-on-trees', 'least-lost'],
        gains,
        clear: true,
        steps: [
          { change: { code: 'shut', nozzles: ['L7', 'R7'] }, gains, clear: true, remarks: [] },
          { change: { code: 'gear', from: 'high', to: 'low' }, gains: none, clear: false, remarks: [] }
        ],
        remarks: [finding('spray-advice-understated', 'note')]
      },
      { ...today, names: [], gains: none, clear: false, steps: [], remarks: [] }
    ],
    searched: { airs: 6, settings: 2449, constants: [] },
    findings: [finding('spray-advice-judges', 'note')]
  };
  it('are the front with today on it, then every plan step by step with its remarks', () => {
    expect(adviceLines(result(), advice, 'metric').map(plainly)).toEqual([
      ' on the trees lost CV work rate water drops',
      'today 44 % 39 % 15 % 2.28 ha/h 361 L/ha fine',
      '(1) most on the trees, least lost 48 % 30 % 15 % 2.28 ha/h 316 L/ha fine',
      '(2) 44 % 39 % 15 % 2.28 ha/h 361 L/ha fine no clear difference',
      '(1) puts 9.1 % more of what is sprayed on the trees, loses 9 points less:',
      ' Shutting L7 and R7 puts 9.1 % more of what is sprayed on the trees and loses 9 points less.',
      ' Taking fan gear Low for High makes no clear difference.',
      ' Note What less air saves is understated here: published trials found far lower losses.',
      '(2) makes no clear difference:',
      'Looked at 2 449 settings with 6 kinds of air.',
      'Note This ranks settings; it is no recommendation. Ribbons, water-sensitive paper, the label and',
      ' local rules decide.'
    ]);
  });
  it('are the reason where nothing is advised', () => {
    expect(adviceLines(result(), { kind: 'refused', code: 'advice-inversion', path: 'day', parameters: {} }, 'metric').join(' ')).toMatch(/^There are signs of an inversion/);
  });
});

describe('figures for the terminal', () => {
  it('are whole points, tenths below ten, nothing below that', () => {
    expect([0, 0.0004, 0.0006, 0.0994, 0.0996, 0.444, 1].map(part)).toEqual(['0\u00a0%', '0\u00a0%', '0.1\u00a0%', '9.9\u00a0%', '10\u00a0%', '44\u00a0%', '100\u00a0%']);
    expect([0.004, 0.45, 3].map((v) => inLine(v, 'm', 'metric'))).toEqual(['0.00', '0.45', '3.00']);
    expect(inLine(3.048, 'm', 'us')).toBe('10.0');
  });
  it('join height cells by what grows in them', () => {
    const cell = (from: number, areaIndex: number, share: number, deposit: number | null) => ({ fromM: from, toM: from + 1, areaIndex, share, byDepth: [share / 4, share / 4, share / 8, 0], depositUlPerCm2: deposit });
    const cells: SprayBalance['heights'] = [cell(0, 1, 0.2, 2), cell(1, 3, 0.1, 4), cell(2, 0, 0, null), cell(3, 2, 0.4, 1)];
    const [top, bottom, ...more] = layers(cells);
    expect(more).toEqual([]);
    // (2·1 + 4·3) / 4; the near half is half of each share, the far half an eighth.
    expect(bottom).toMatchObject({ fromM: 0, toM: 2, deposit: 3.5 });
    expect([bottom!.share, bottom!.near, bottom!.far, bottom!.rows]).toEqual([expect.closeTo(0.3, 12), expect.closeTo(0.15, 12), expect.closeTo(0.0375, 12), expect.closeTo(0.1125, 12)]);
    expect(top).toMatchObject({ fromM: 2, toM: 4, deposit: 1 });
    expect(layers([cell(0, 0, 0, null), cell(1, 0, 0, null)])[0]!.deposit).toBeNull();
  });
});
