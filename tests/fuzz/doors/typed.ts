import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { dispatch } from '#cli/dispatch.ts';
import { EXIT } from '#cli/exit.ts';
import { compileOwn } from '#core/dose/own/own.ts';
import { entered, UNIT_SYSTEMS, type Unit } from '#core/quantity/units.ts';
import { formatPlain } from '#words/format.ts';
import { language, speak } from '#words/language.ts';
import { numberTyped, tidy } from '#ui/parts/typed.ts';
import { finite, reasons, text, utf8, type Door } from '../door.ts';
import { said } from './points.ts';

const FORMULAS = ['TRVc / 10000', 'min(1, max(0.4, LWA / 16000))', '0.5 + TRVg / 20000', 'sqrt(h * W) ^ 1.5 - exp(-LAI)', '-(H - Hs) / R + abs(log(f))', '02 +', 'a.b', 'x => 1', 'constructor("x")'];
const nested = fc.tuple(fc.constantFrom('(', 'min(1,', '-', '2^', 'sqrt('), fc.nat(400)).map(([t, n]) => utf8(`${t.repeat(n)}1`));

const UNITS: readonly Unit[] = ['m', 'bar', 'km/h', 'L/ha', 'L/min', 'degC', '1', 'kPa', 'deg'];
const NUMBERS = ['3.2', '1,5', '1 234,5', '-0.25', '1,234', '1.234', '12e3', '0x1F', '٣', '１２', '1_000', "1'234", '+7', '.5', '5.', '−3', 'NaN', 'Infinity', '1e999'];
/** Every language writes with a point or with a comma. */
const MARKS = ['.', ','] as const;
const plainNumber = fc.tuple(fc.double({ noNaN: true, noDefaultInfinity: true, min: -2e4, max: 2e4 }), fc.constantFrom(...MARKS)).map(([v, mark]) => utf8(String(v).replace('.', mark)));

const TREES = readFileSync('tests/cli/documents/trees.csv');
const BENCH = readFileSync('demo-data/lower-bench.json');
const VERBS = ['advise', 'loads', 'check', 'fit', 'season', 'strategies', 'spray', 'laser', 'survey', 'table', 'sql'];
const OPTIONS = ['--block', '--rung', '--units', '--json', '--help', '-h', '--label', '--setting', '--draws', '--seed', '--tornado', '--of', '--csv', '--bibtex', '--fixed', '--weather', '--side', '--row-spacing', '--unit', '--bearing', '--origin', '--by', '--block-trees', '--group-trees', '--dialect', '--threads', '--format', '--intervals', '--strategies', '--spray', '--assumptions', '--'];
const WORDS = ['', '-', 'lower-bench', 'full-leaf', 'us', 'metric', 'nowhere.json', '../../etc/passwd', '__proto__', 'constructor', '1', '-1', '1e9', 'NaN', '99999999999999999999', 'x=1', '\u202e', '\u0000', "'; DROP TABLE x; --", 'duckdb', 'm', 'index', 'row'];
/** Words of a line, one below the other. */
const line = fc.tuple(fc.constantFrom(...VERBS, ...WORDS), fc.array(fc.oneof(fc.constantFrom(...OPTIONS), fc.constantFrom(...WORDS)), { maxLength: 6 })).map((words) => utf8(words.flat().join('\n')));

export const TYPED_DOORS: readonly Door[] = [
  {
    name: 'formula',
    files: FORMULAS.map(utf8),
    hostile: nested,
    read(bytes) {
      const own = (index: string) => compileOwn({ id: 'x', name: 'x', index });
      const r = own(text(bytes));
      if ('kind' in r) return reasons([r], said);
      const values = Object.fromEntries(Object.keys(r.index.inputs).map((name, i) => [name, i + 0.5]));
      const value = r.index.compute(values);
      if (!(Number.isNaN(value) || (Number.isFinite(value) && value >= 0))) throw new Error(`a formula gives ${value}`);
      // As it is printed, it is the same formula.
      const again = own(r.index.expression);
      if ('kind' in again) {
        if (r.index.expression.length <= 300) throw new Error(`${r.index.expression} is not read again: ${again.code}`);
      } else if (!Object.is(again.index.compute(values), value)) throw new Error(`${r.index.expression} gives another value`);
      return true;
    }
  },
  {
    name: 'number in a field',
    files: NUMBERS.map(utf8),
    hostile: plainNumber,
    read(bytes) {
      const typed = text(bytes);
      const english = language();
      let took = false;
      try {
        for (const decimalMark of MARKS) {
          speak({ ...english, decimalMark });
          const n = numberTyped(typed);
          if (Number.isNaN(n)) continue;
          if (!Number.isFinite(n)) {
            // No range lets it through.
            continue;
          }
          took = true;
          for (const unit of UNITS)
            for (const system of UNIT_SYSTEMS) {
              const value = tidy(entered(n, unit, system));
              finite(value, unit);
              // Beyond what any field takes, and below what the coarsest shows, a face is no longer the number.
              if (Math.abs(value) > 1e9 || (value !== 0 && Math.abs(value) < 0.1) || (n !== 0 && Math.abs(n) < 0.1)) continue;
              // What a field shows, left as it is, says the same.
              const face = formatPlain(value, unit, system);
              const back = numberTyped(face);
              if (formatPlain(tidy(entered(back, unit, system)), unit, system) !== face) throw new Error(`${face} (${unit}, ${system}) is read as ${back}, typed ${typed}`);
            }
        }
      } finally {
        speak(english);
      }
      return took;
    }
  },
  {
    name: 'words of the command line',
    files: [utf8('loads\n-\n--block\nlower-bench'), utf8('survey\n-\n--by\nrow'), utf8('strategies\n-\n--csv'), utf8('sql\nrow_spacing_m,tree_height_m,canopy_width_m,block'), utf8('table\n--help')],
    hostile: line,
    async read(bytes) {
      const words = text(bytes).split('\n').slice(0, 20);
      // Nothing is written, no threads are started, and nothing is drawn a million times: that is asked for, not slipped in.
      if (words.some((w) => /^--(out|manifest)/.test(w)) || (words.some((w) => /^--draws/.test(w)) && words.some((w) => /\d{4}/.test(w)))) return false;
      if (words[0] === 'table' || words[0] === 'spray' || words[0] === 'advise' || words[0] === 'fit') for (let i = 1; i < words.length; i++) if (!words[i]!.startsWith('--')) words[i] = 'nowhere';
      let told = '';
      const say = (t: string): void => void (told += t);
      async function* stdin(): AsyncGenerator<Uint8Array> {
        yield words[0] === 'survey' ? TREES : BENCH;
      }
      const exit = await dispatch(words, { stdin: stdin(), out: say, err: say });
      if (!Object.values(EXIT).includes(exit)) throw new Error(`it ends with ${exit}`);
      if (told === '') throw new Error('nothing was said');
      // A terminal obeys none of it.
      const obeyed = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/u.exec(told);
      if (obeyed) throw new Error(`U+${obeyed[0].codePointAt(0)!.toString(16)} goes to the terminal: ${JSON.stringify(told.slice(Math.max(0, obeyed.index - 40), obeyed.index + 10))}`);
      return exit === EXIT.done;
    }
  }
];
