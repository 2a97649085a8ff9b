import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Readable } from 'node:stream';
import { dispatch } from '#cli/dispatch.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const TWO = 'tests/cli/documents/two-rungs.json';

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a verb in this process. */
async function rowtailor(args: readonly string[], input = ''): Promise<Ended> {
  let [out, err] = ['', ''];
  const code = await dispatch(args, {
    stdin: Readable.from([Buffer.from(input)]),
    out: (text) => (out += text),
    err: (text) => (err += text)
  });
  return { code, out, err };
}

/** Runs the command line as a user does, in a process of its own. */
const asProcess = (args: readonly string[], input: string = ''): Promise<Ended> =>
  new Promise((resolve) => {
    const child = execFile(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', ...args], { cwd: ROOT, maxBuffer: 1e8 }, (error, out, err) =>
      resolve({ code: error ? Number(error.code) : 0, out, err })
    );
    // A verb that stops before reading closes the pipe; that is its right.
    child.stdin?.on('error', () => {});
    child.stdin?.end(input);
  });

let scratch = '';
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
});
afterAll(() => rm(scratch, { recursive: true }));
const file = async (name: string, content: string | Uint8Array): Promise<string> => {
  const path = join(scratch, name);
  await writeFile(path, content);
  return path;
};

describe('advise', () => {
  it('prints every rung of a document in metric units', async () => {
    const { code, out, err } = await rowtailor(['advise', TWO]);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot('golden/two-rungs.txt');
  });

  it('prints one rung in US units', async () => {
    const { code, out, err } = await rowtailor(['advise', TWO, '--block', 'gate', '--rung', 'leaf', '--units', 'us']);
    expect([code, err]).toEqual([0, '']);
    await expect(out).toMatchFileSnapshot('golden/two-rungs-leaf-us.txt');
  });

  it('is a process that reads standard input for - and ends with the exit code', async () => {
    const text = await readFile(join(ROOT, TWO), 'utf8');
    const piped = await asProcess(['advise', '-', '--rung', 'leaf'], text);
    const read = await rowtailor(['advise', TWO, '--rung', 'leaf']);
    expect(piped).toEqual(read);
    expect(piped.code).toBe(0);
    expect((await asProcess(['advise', 'tests/cli/documents/refused.json'])).code).toBe(1);
  });

  it('prints the whole result with its working as JSON', async () => {
    const { code, out } = await rowtailor(['advise', TWO, '--rung', 'bloom', '--json']);
    expect(code).toBe(0);
    const { format, version, results } = JSON.parse(out);
    expect([format, version, results.length]).toEqual(['rowtailor-advice', 1, 1]);
    const volume = results[0].sprayer.volume;
    expect(Object.keys(volume)).toEqual(['value', 'unit', 'symbol', 'formula', 'expression', 'certainty', 'extrapolated', 'sources', 'inputs']);
    // By hand: four cones of 1.5 and two of 1.0 L/min at 10 bar, at 8 bar; 600·Q/(6·4).
    const flow = (4 * 1.5 + 2 * 1) * Math.sqrt(8 / 10);
    expect(volume.value).toBeCloseTo((600 * flow) / (6 * 4), 9);
    expect(volume.inputs.Q.inputs.L1.inputs.P).toEqual({ value: 8, unit: 'bar', certainty: 'stated', path: 'setting.pressureBar' });
    // 10 000 · 2.2 · 1.0 / 4
    expect(results[0].canopy.figures.TRVc.value).toBeCloseTo(5500, 9);
    expect(out).not.toMatch(/Infinity|NaN|e\+308|undefined|\[object/);
    await expect(JSON.stringify(outline(results[0]), null, 1) + '\n').toMatchFileSnapshot('golden/two-rungs-bloom.keys.json');
  });

  it('gives the same bytes twice', async () => {
    const args = ['advise', TWO, '--json'];
    const [a, b] = [await rowtailor(args), await rowtailor(args)];
    expect(a.out).toBe(b.out);
  });

  it.each(['lower-bench', 'citrus-globes', 'cherry-wall'])('works out the demo %s', async (name) => {
    const { code, out, err } = await rowtailor(['advise', `demo-data/${name}.json`]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('The label and local law rule');
    expect(out).not.toMatch(/NaN|Infinity|undefined|\{\w+\}/);
  });

  it('tells its usage', async () => {
    const { code, out, err } = await rowtailor(['advise', '--help']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('rowtailor advise FILE');
    expect((await rowtailor(['--help'])).out).toContain('advise FILE');
  });

  describe('refuses', () => {
    it('a document with mistakes: each named, exit code 1, nothing on standard output', async () => {
      const { code, out, err } = await rowtailor(['advise', 'tests/cli/documents/refused.json']);
      expect([code, out]).toEqual([1, '']);
      expect(err).toContain('blocks[0].rowSpacingM is 400');
      expect(err).toContain('canopy.hieghtM is not a field here');
    });

    it('figures that a contradictory canopy does not have, and prints the rest', async () => {
      const { code, out, err } = await rowtailor(['advise', 'tests/cli/documents/skirt-at-top.json']);
      expect(code).toBe(1);
      expect(err).toBe('Gate block, Full bloom: some figures could not be worked out. The skirt is not below the top.\n');
      expect(plain(out)).toContain('The skirt (2.80 m) is not below the top (2.80 m). Correct one of the two.');
      expect(plain(out)).toContain('water as set          179 L/ha');
    });

    it('a newer version by name', async () => {
      const text = (await readFile(join(ROOT, TWO), 'utf8')).replace('"version": 1', '"version": 7');
      const { code, err } = await rowtailor(['advise', await file('newer.json', text)]);
      expect(code).toBe(1);
      expect(err).toMatch(/version.*7/);
    });

    it.each([
      ['no file', ['advise'], 'Name one document'],
      ['two files', ['advise', 'a', 'b'], 'One document at a time'],
      ['other units', ['advise', TWO, '--units', 'cubits'], 'it must be metric, metric-psi, metric-mph, acres, imperial or us'],
      ['an option that is not there', ['advise', TWO, '--colour'], "'--colour'"],
      ['an option without its value', ['advise', TWO, '--block'], '--block'],
      ['a block that is not there', ['advise', TWO, '--block', 'nowhere'], 'Blocks: gate.'],
      ['a rung that is not there', ['advise', TWO, '--rung', 'never'], 'Rungs: bloom, leaf.'],
      ['a verb that is not there', ['advice', TWO], 'There is no verb "advice"'],
      ['a verb of the language’s own machinery', ['constructor'], 'There is no verb'],
      ['no verb', [], 'rowtailor VERB']
    ])('%s: exit code 2', async (_, args, message) => {
      const { code, out, err } = await rowtailor(args);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain(message);
    });

    it('what cannot be read: exit code 3', async () => {
      const cases: [string, string][] = [
        [join(scratch, 'absent.json'), 'there is no such file'],
        [scratch, 'it is a folder'],
        [await file('text.json', 'spray on Monday'), 'text.json'],
        [await file('empty.json', ''), 'empty.json'],
        [await file('latin.json', new Uint8Array([0x7b, 0x22, 0xe9, 0x22, 0x7d])), 'not UTF-8'],
        [await file('large.json', ' '.repeat(10_000_001)), 'larger than 10 MB']
      ];
      for (const [path, message] of cases) {
        const { code, out, err } = await rowtailor(['advise', path]);
        expect([path, code, out]).toEqual([path, 3, '']);
        expect(err).toContain(message);
      }
    });
  });
});

/** With common blanks for the fixed ones between figure and unit. */
const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

/** Keys alone, for a golden that does not hold every number twice. */
function outline(value: unknown): unknown {
  if (Array.isArray(value)) return value.length === 0 ? [] : [outline(value[0])];
  if (typeof value !== 'object' || value === null) return typeof value;
  if ('formula' in value) return 'figure';
  if ('certainty' in value) return 'given';
  if ('refused' in value) return 'refused';
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, outline(v)]));
}
