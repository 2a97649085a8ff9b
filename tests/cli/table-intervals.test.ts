import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import jstat from 'jstat';
import * as ss from 'simple-statistics';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { USUAL } from '#cli/table/figure-columns.ts';
import { kindsOf } from '#cli/table/interval-columns.ts';
import type { Done } from '#cli/table/piece.ts';
import { FIGURE_NAMES, HEADER } from '#core/dose/table/plan.ts';
import { drawCanopies, roomFor, type Means } from '#core/canopy/draws/draws.ts';
import type { CanopyErrors } from '#core/canopy/types.ts';
import { intervalOf } from '#core/canopy/uncertainty.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Answer } from '#core/working/answer.ts';
import { readHeader, type Header } from '#job/csv/header.ts';
import { records, rowtailor } from '../support/command.ts';
import { defined, document } from '../support/sample.ts';
import { figures as workOff, intervalHeader, withIntervals } from '../support/table.ts';

const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,height_se_m,skirt_se_m,width_se_m,row_spacing_se_m,height_width_correlation,trees';
const header = readHeader(HEAD, 1) as Header;
const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new Uint8Array(Buffer.from(text));
const work = (text: string, draws: number | null = null, seed = 1): Done => withIntervals({ draws, seed })({ header, line: 2, bytes: bytesOf(text) });
function rows(text: string, draws: number | null = null, seed = 1): Record<string, string>[] {
  const done = work(text, draws, seed);
  expect(done.problems).toEqual([]);
  return records(`${HEADER},${intervalHeader({ draws, seed })}\n${Buffer.from(done.bytes).toString()}`);
}
const number = (row: Record<string, string>, name: string): number => {
  expect(row[name], name).toMatch(/\d/);
  return Number(row[name]);
};

let scratch = '';
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
});
afterAll(() => rm(scratch, { recursive: true }));
const file = async (name: string, content: string): Promise<string> => {
  const path = join(scratch, name);
  await writeFile(path, content);
  return path;
};

describe('intervals by formula', () => {
  it('are those that the whole evaluation of the same canopy gives', () => {
    const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const error = fc.option(within(0.001, 0.5), { nil: undefined });
    const ROW = fc.record({ R: within(2, 8), H: within(1, 6), share: within(0, 0.9), W: within(0.3, 3), h: error, s: error, w: error, r: error, rho: fc.option(within(-1, 1), { nil: undefined }), trees: fc.option(fc.integer({ min: 2, max: 99 }), { nil: undefined }) });
    fc.assert(
      fc.property(ROW, ({ R, H, share, W, h, s, w, r, rho, trees }) => {
        const [row] = rows(`x,${R},${H},${share * H},${W},${[h, s, w, r, rho, trees].map((v) => v ?? '').join(',')}\n`);
        const silent = document({ block: { rowSpacingM: R } });
        const canopy = { heightM: H, skirtM: share * H, widthM: W, errors: defined({ heightSeM: h, skirtSeM: s, widthSeM: w, rowSpacingSeM: r, heightWidthCorrelation: rho, trees }) };
        const result = evaluate({ ...silent, blocks: [{ ...silent.blocks[0]!, rungs: [{ ...silent.blocks[0]!.rungs[0]!, canopy }] }] }, 'block', 'now');
        if ('kind' in result) throw new Error(result.code);
        const strategy = (id: string) => result.strategies.find((x) => x.strategy.id === id)!;
        const answers: Record<string, Answer> = {
          trv_ground_m3_per_ha: result.canopy.figures.TRVg,
          trv_crown_m3_per_ha: result.canopy.figures.TRVc,
          lwa_m2_per_ha: result.canopy.figures.LWA,
          row_length_m_per_ha: result.canopy.figures.RL,
          ucr_per_ha: result.canopy.figures.UCR,
          us_trv_water_l_per_ha: strategy('us-row-volume').water!,
          swiss_water_l_per_ha: strategy('swiss-affine').water!
        };
        for (const { strategy: { id }, water, index } of result.strategies) {
          const name = id.replaceAll('-', '_');
          if (FIGURE_NAMES.includes(`${name}_water_l_per_ha`)) answers[`${name}_water_l_per_ha`] = water!;
          if (FIGURE_NAMES.includes(`${name}_dose_index`)) answers[`${name}_dose_index`] = index;
        }
        expect(Object.keys(answers).length).toBeGreaterThan(14);
        for (const [name, answer] of Object.entries(answers)) {
          const wanted = intervalOf(answer, result.canopy.errors);
          if (!wanted) {
            // Nothing under it has an error, or all cancels out.
            if (row![`${name}_low`] !== '') expect(number(row!, `${name}_high`) - number(row!, `${name}_low`)).toBeLessThan(1e-4 * number(row!, name));
            continue;
          }
          const tolerance = 1e-5 * (wanted.high - wanted.low) + 1e-7 * Math.abs(wanted.high);
          expect(Math.abs(number(row!, `${name}_low`) - wanted.low), name).toBeLessThan(tolerance);
          expect(Math.abs(number(row!, `${name}_high`) - wanted.high), name).toBeLessThan(tolerance);
        }
      }),
      { numRuns: 60 }
    );
  });

  it('are the same in feet', async () => {
    const us = records((await rowtailor(['table', '-', '--intervals'], 'block,row_spacing_ft,tree_height_ft,canopy_width_ft,height_se_ft,width_se_ft,row_spacing_se_ft\na,12,10,5,0.5,0.25,0.1\n')).out)[0]!;
    const si = records((await rowtailor(['table', '-', '--intervals'], 'block,row_spacing_m,tree_height_m,canopy_width_m,height_se_m,width_se_m,row_spacing_se_m\na,3.6576,3.048,1.524,0.1524,0.0762,0.03048\n')).out)[0]!;
    for (const [name, value] of Object.entries(us)) if (name !== 'block' && value !== '') expect(Math.abs(Number(value) / Number(si[name]) - 1), name).toBeLessThan(1e-9);
  });
});

describe('intervals by draws', () => {
  it.each([['normal', ''], ['of t', '12']])('agree with those by formula where errors are small, %s', (_, trees) => {
    const draws = 10_000;
    const [row] = rows(`x,4,3,0.6,1.5,0.03,0.006,0.015,0.02,0.4,${trees}\n`, draws);
    const coverage = trees ? (jstat.studentt.inv(0.975, 11) as number) : 1.959964;
    // Standard error of a 2.5 % point: √(p·(1 − p)/N) over the density there.
    const density = trees ? (jstat.studentt.pdf(coverage, 11) as number) : Math.exp(-(coverage ** 2) / 2) / Math.sqrt(2 * Math.PI);
    const sampling = Math.sqrt((0.025 * 0.975) / draws) / density;
    for (const name of FIGURE_NAMES) {
      const [low, high] = [number(row!, `${name}_low`), number(row!, `${name}_high`)];
      const se = (high - low) / 2 / coverage;
      expect(se).toBeGreaterThan(0);
      // Five standard errors, and what the second order may do at errors of a per cent.
      const most = (5 * sampling + 0.05) * se;
      expect(Math.abs(number(row!, `${name}_mc_low`) - low), `${name} low`).toBeLessThan(most);
      expect(Math.abs(number(row!, `${name}_mc_high`) - high), `${name} high`).toBeLessThan(most);
    }
    expect(row!['draws_redrawn']).toBe('0');
  });

  it('agree with an independent sampler where errors are large, and where the formula does not', () => {
    // Height, width and spacing with errors of a fifth; figures by hand.
    const draws = 20_000;
    const [row] = rows(`x,4,3,0,1.5,0.6,,0.3,0.8,0.5,\n`, draws);
    let state = 12345;
    jstat.setRandom(() => (state = (state * 48271) % 2147483647) / 2147483647);
    const theirs: Record<string, number[]> = { trv_ground_m3_per_ha: [], row_length_m_per_ha: [], swiss_water_l_per_ha: [], crown_height_water_l_per_ha: [] };
    while (theirs['row_length_m_per_ha']!.length < 60_000) {
      const z = jstat.normal.sample(0, 1) as number;
      const H = 3 + 0.6 * z;
      const W = 1.5 + 0.3 * (0.5 * z + Math.sqrt(0.75) * (jstat.normal.sample(0, 1) as number));
      const R = 4 + 0.8 * (jstat.normal.sample(0, 1) as number);
      if (!(H > 0 && W > 0 && R > 0)) continue;
      theirs['trv_ground_m3_per_ha']!.push((10000 * H * W) / R);
      theirs['row_length_m_per_ha']!.push(10000 / R);
      theirs['swiss_water_l_per_ha']!.push((0.02 * 10000 * H * W) / R + 200);
      theirs['crown_height_water_l_per_ha']!.push(300 * H);
    }
    let parted = 0;
    for (const [name, list] of Object.entries(theirs)) {
      const half = (ss.quantile(list, 0.975) - ss.quantile(list, 0.025)) / 2;
      // The long tail is thin: its end is the less certain one.
      for (const [end, p] of [['low', 0.025], ['high', 0.975]] as const) {
        expect(Math.abs(number(row!, `${name}_mc_${end}`) - ss.quantile(list, p)) / half, `${name} ${end}`).toBeLessThan(0.08);
        if (Math.abs(number(row!, `${name}_${end}`) - ss.quantile(list, p)) / half > 0.15) parted++;
      }
    }
    expect(parted).toBeGreaterThan(1);
  });

  it('are those of every figure ranked by itself, though only one of each kind is', () => {
    const draws = 500;
    let compared = 0;
    const cases: (readonly [Means, CanopyErrors, number, number, number])[] = [
      [{ heightM: 3, skirtM: 0.6, widthM: 1.5, rowSpacingM: 4 }, { heightSeM: 0.1, skirtSeM: 0.05, widthSeM: 0.08, rowSpacingSeM: 0.03 }, NaN, NaN, 1],
      [{ heightM: 6, skirtM: 0.1, widthM: 3, rowSpacingM: 7 }, { heightSeM: 1, skirtSeM: 0.5, widthSeM: 1, rowSpacingSeM: 1.5, heightWidthCorrelation: -0.8 }, 1, 0.1, 0.4],
      [{ heightM: 1, skirtM: 0.8, widthM: 0.3, rowSpacingM: 1 }, { heightSeM: 0.3, skirtSeM: 0.3, widthSeM: 0.1, rowSpacingSeM: 0.2, heightWidthCorrelation: 0.9, trees: 3 }, 0.5, 12, 0.9],
      [{ heightM: 4, skirtM: 0, widthM: 2, rowSpacingM: 5 }, { heightSeM: 0.2, skirtSeM: 0, widthSeM: 0.2, rowSpacingSeM: 0 }, NaN, 3, 0]
    ];
    const all = readHeader(`${HEAD},density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction`, 1) as Header;
    const told = (v: number | undefined): string => (v === undefined || Number.isNaN(v) ? '' : String(v));
    for (const [m, e, k, lad, f] of cases) {
      const line = ['x', m.rowSpacingM, m.heightM, m.skirtM, m.widthM, ...[e.heightSeM, e.skirtSeM, e.widthSeM, e.rowSpacingSeM, e.heightWidthCorrelation, e.trees, k, lad, f].map(told)].join(',');
      const done = withIntervals({ draws, seed: 5 })({ header: all, line: 2, bytes: bytesOf(`${line}\n`) });
      const row = records(`${HEADER},${intervalHeader({ draws, seed: 5 })}\n${Buffer.from(done.bytes).toString()}`)[0]!;
      const drawn = roomFor(draws);
      expect(drawCanopies(m, e, { seed: 5, of: 2 }, drawn)).toBe(Number(row['draws_redrawn']));
      // The plain table of the drawn canopies, every column sorted.
      const plain = readHeader('block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction', 1) as Header;
      const text = Array.from(drawn.heightM, (_, i) => `d,${drawn.rowSpacingM[i]},${drawn.heightM[i]},${drawn.skirtM[i]},${drawn.widthM[i]},${told(k)},${told(lad)},${f}\n`);
      const figures = text.flatMap((t) => records(`${HEADER}\n${Buffer.from(workOff({ header: plain, line: 2, bytes: bytesOf(t) }).bytes).toString()}`));
      // A canopy beyond what a table may hold is drawn all the same: nothing can be said of those ranks here.
      if (figures.length < draws) continue;
      for (const name of FIGURE_NAMES) {
        const sorted = figures.map((r) => Number(r[name])).toSorted((a, b) => a - b);
        expect([number(row, `${name}_mc_low`), number(row, `${name}_mc_high`)], name).toEqual([12, 487].map((n) => Number(sorted[n]!.toPrecision(6))));
      }
      compared++;
    }
    expect(compared).toBeGreaterThan(2);
    expect(kindsOf(USUAL).leaders.length).toBeLessThan(8);
  });

  it('of a line are golden', () => {
    const [row] = rows('x,4,3,0.6,1.5,0.1,0.05,0.08,0.03,0.4,12\n', 1000, 7);
    expect(['trv_crown_m3_per_ha_mc_low', 'trv_crown_m3_per_ha_mc_high', 'swiss_water_l_per_ha_mc_low', 'swiss_water_l_per_ha_mc_high', 'draws_redrawn'].map((n) => row![n])).toMatchInlineSnapshot(`
      [
        "7386.44",
        "10757.9",
        "347.729",
        "415.159",
        "0",
      ]
    `);
  });
});

describe('laws', () => {
  const LINE = (h: number, w: number): string => `x,4,3,0.6,1.5,${h},0,${w},0,0.3,\n`;
  it('a wider error makes a wider interval, both ways', () => {
    for (const name of ['trv_ground_m3_per_ha', 'swiss_water_l_per_ha', 'lwa_m2_per_ha', 'leaf_area_water_l_per_ha'])
      for (const kind of ['', 'mc_']) {
        const widths = [0.01, 0.02, 0.05, 0.1, 0.2].map((e) => {
          const [row] = rows(LINE(e, e / 2), 200);
          return number(row!, `${name}_${kind}high`) - number(row!, `${name}_${kind}low`);
        });
        expect(widths, `${name} ${kind}`).toEqual(widths.toSorted((a, b) => a - b));
        expect(widths[0]).toBeGreaterThan(0);
      }
  });
  it('an error of 0 makes none, at the figure itself', () => {
    const [row] = rows(LINE(0, 0), 100);
    for (const name of FIGURE_NAMES) {
      expect([row![`${name}_low`], row![`${name}_high`]]).toEqual([row![name], row![name]]);
      expect(row![`${name}_mc_low`]).toBe(row![`${name}_mc_high`]);
      expect(Math.abs(number(row!, `${name}_mc_low`) / number(row!, name) - 1)).toBeLessThan(5e-6);
    }
  });
  it('a figure that rests on nothing with an error has empty cells', () => {
    const [width, none] = rows('x,4,3,0.6,1.5,,,0.1,,,\ny,4,3,0.6,1.5,,,,,,\n', 100);
    for (const end of ['low', 'high', 'mc_low', 'mc_high']) {
      for (const name of ['lwa_m2_per_ha', 'row_length_m_per_ha', 'crown_height_water_l_per_ha']) expect(width![`${name}_${end}`]).toBe('');
      expect(width![`trv_crown_m3_per_ha_${end}`]).not.toBe('');
      for (const name of FIGURE_NAMES) expect(none![`${name}_${end}`]).toBe('');
    }
    expect(none!['draws_redrawn']).toBe('');
  });
  it('the figures before them are those of the plain table, which passes errors over', () => {
    const text = '"a, ""b""",4,3,0.5,1.2,0.1,,0.1,,,\nlast,5,4,0,2,0.1,0,0.1,0.02,0.4,9\n';
    const plain = Buffer.from(workOff({ header, line: 2, bytes: bytesOf(text) }).bytes).toString().trimEnd().split('\n');
    const more = Buffer.from(work(text, 100).bytes).toString().trimEnd().split('\n');
    expect(plain).toHaveLength(2);
    plain.forEach((line, i) => expect(more[i]!.startsWith(`${line},`)).toBe(true));
    const bad = 'a,4,3,0.5,1.2,much,,0.1,,,\n';
    expect(workOff({ header, line: 2, bytes: bytesOf(bad) }).problems).toEqual([]);
  });
});

const LINES = Array.from({ length: 900 }, (_, i) => `block-${i},${3 + (i % 30) / 10},${2 + (i % 20) / 10},0.5,${1 + (i % 9) / 10},0.1,0.02,0.05,0.02,0.4,${i % 3 ? '' : 5 + (i % 9)}\n`).join('');

describe('the command', () => {
  it('gives the same bytes over several threads as in one piece, and again', async () => {
    const args = ['table', await file('many.csv', `${HEAD}\n${LINES}`), '--intervals', '--draws', '150', '--seed', '3'];
    const [one, two] = [await rowtailor(args), await rowtailor(args)];
    expect(one.code).toBe(0);
    expect(one.err).toMatch(/^Intervals are 95 % and hold .*\n$/);
    expect(two.out === one.out).toBe(true);
    expect(one.out === `${HEADER},${intervalHeader({ draws: 150, seed: 3 })}\n${Buffer.from(work(LINES, 150, 3).bytes).toString()}`).toBe(true);
    expect(Buffer.from(work(LINES, 150, 4).bytes).toString() === one.out.slice(one.out.indexOf('\n') + 1)).toBe(false);
  });

  it('writes a manifest: the same again byte for byte, with the hashes of what was read and written', async () => {
    const text = `${HEAD}\n${LINES.slice(0, 5000).replace(/[^\n]*$/, '')}`;
    const path = await file('some.csv', text);
    const [out, manifest] = [join(scratch, 'some.out.csv'), join(scratch, 'run.json')];
    const args = ['table', path, '--out', out, '--intervals', '--draws', '100', '--manifest', manifest];
    expect((await rowtailor(args)).code).toBe(0);
    const [first, table] = [await readFile(manifest, 'utf8'), await readFile(out, 'utf8')];
    expect((await rowtailor(args)).code).toBe(0);
    expect(await readFile(manifest, 'utf8')).toBe(first);
    expect(await readFile(out, 'utf8')).toBe(table);
    const sha256 = (content: string): string => createHash('sha256').update(content).digest('hex');
    const told = JSON.parse(first);
    expect(told).toMatchObject({
      format: 'rowtailor-manifest',
      input: { sha256: sha256(text), bytes: text.length },
      output: { sha256: sha256(table), bytes: table.length },
      options: { intervals: true, draws: 100, seed: 1, level: 0.95 },
      columns: table.split('\n')[0]!.split(',')
    });
    expect(told.strategies['swiss-affine'].b).toEqual({ id: 'swiss-affine.water-slope', value: 0.02, unit: 'L/m3', certainty: 'memory' });
    for (const word of [scratch, 'some.csv', '2026']) expect(first.replace(/swiss-register-2026/g, '')).not.toContain(word);

    // From standard input and to standard output it is the same table; another seed is another.
    const piped = join(scratch, 'piped.json');
    expect((await rowtailor(['table', '-', '--intervals', '--draws', '100', '--seed', '1', '--manifest', piped], text)).out).toBe(table);
    expect(await readFile(piped, 'utf8')).toBe(first);
    await rowtailor(['table', '-', '--intervals', '--draws', '100', '--seed', '2', '--manifest', piped], text);
    expect(JSON.parse(await readFile(piped, 'utf8')).output.sha256).not.toBe(told.output.sha256);
    // The plain table has one as well.
    await rowtailor(['table', '-', '--manifest', piped], text);
    expect(JSON.parse(await readFile(piped, 'utf8')).options).toEqual({ strategies: false, intervals: false, spray: false, format: 'csv' });
  });

  it('leaves no manifest of a table that is refused as a whole', async () => {
    const path = join(scratch, 'never.json');
    expect((await rowtailor(['table', '-', '--manifest', path], 'block,height\na,3\n')).code).toBe(1);
    await expect(stat(path)).rejects.toThrow();
  });

  const PLAIN = 'block,row_spacing_m,tree_height_m,canopy_width_m\na,4,3,1.5\n';
  it.each<[string, string[], string]>([
    ['--draws alone', ['--draws', '100'], '--draws goes with --intervals'],
    ['--seed alone', ['--seed', '1'], '--seed goes with --intervals'],
    ['--seed without --draws', ['--intervals', '--seed', '1'], '--seed goes with --draws'],
    ['too few draws', ['--intervals', '--draws', '99'], '--draws is "99"; a whole number, 100 to 100,000, is needed'],
    ['half a draw', ['--intervals', '--draws', '100.5'], '--draws is "100.5"'],
    ['a seed that is a word', ['--intervals', '--draws', '100', '--seed', 'lucky'], '--seed is "lucky"'],
    ['a seed too large to be whole', ['--intervals', '--draws', '100', '--seed', '9007199254740992'], '--seed is "9007199254740992"'],
    ['--spray beside it', ['--intervals', '--spray', '--setting', 'demo-data/cherry-wall.json'], '--intervals does not go with --spray'],
    ['no column of errors', ['--intervals'], '--intervals needs at least one column of standard errors: height_se_m']
  ])('refuses %s', async (_, args, message) => {
    const { code, out, err } = await rowtailor(['table', '-', ...args], PLAIN);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
    expect(err).toContain('rowtailor table --help');
  });

  it('refuses a manifest that is the table read or written', async () => {
    const path = await file('kept.csv', PLAIN);
    const out = join(scratch, 'o.csv');
    for (const args of [[path, '--manifest', path], [path, '--out', out, '--manifest', out]]) {
      const { code, err } = await rowtailor(['table', ...args]);
      expect(code).toBe(2);
      expect(err).toContain('--manifest is a file that is read or written already');
    }
    expect(await readFile(path, 'utf8')).toBe(PLAIN);
  });

  it('tells bad errors by line and column, and a canopy whose draws are given up', async () => {
    const text = `${HEAD}\na,4,3,0.6,1.5,much,0.1,0.1,,,\nb,4,3,0.6,1.5,-0.1,,,,,\nc,4,3,0.6,1.5,0.1,,,,2,\nd,4,3,0.6,1.5,0.1,,,,,1\ne,0.5,1,0.9,0.1,0,5,5,5,,\nf,4,3,0.6,1.5,NA,,0.1,,,\n`;
    const { code, out, err } = await rowtailor(['table', '-', '--intervals', '--draws', '1000'], text);
    expect(code).toBe(1);
    const found = records(out);
    expect(found.map((r) => r['block'])).toEqual(['e', 'f']);
    expect([found[0]!['trv_crown_m3_per_ha_mc_low'], found[0]!['draws_redrawn']]).toEqual(['', '']);
    expect(found[0]!['trv_crown_m3_per_ha_low']).not.toBe('');
    for (const message of ['Line 2, height_se_m is much; a number, 0 to 5 m, is needed', 'Line 3, height_se_m is -0.1; 0 to 5 m is allowed', 'Line 4, height_width_correlation is 2; -1 to 1', 'Line 5, trees is 1; 2 to 100,000', 'Line 6, block e: a canopy was drawn 100 times and could not be'])
      expect(err).toContain(message);
  });
});
