import { problem, type Problem } from './problem.ts';
import { DEEPEST, LONGEST_FILE, MOST_KEYS, MOST_VALUES } from './limits.ts';

/** Keys by which a careless merge would reach into the machinery of the language. */
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

export type JsonText = { readonly value?: unknown; readonly problems: Problem[]; readonly readable: boolean };

/**
 * Text → value, with all that `JSON.parse` keeps silent about: where the text breaks, keys that stand twice in an object,
 * forbidden keys, depth, and how much there is. `readable` is false where no value can be trusted to be the file's.
 */
export function parseJson(text: string): JsonText {
  const refuse = (p: Problem): JsonText => ({ problems: [p], readable: false });
  if (text.length > LONGEST_FILE) return refuse(problem([], 'too-large', undefined, { length: text.length, most: LONGEST_FILE }));
  const body = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  if (body.trim() === '') return refuse(problem([], 'empty', undefined));
  const scan = new Scan(body);
  const broken = scan.run();
  if (broken) return refuse(broken);
  return { value: JSON.parse(body), problems: scan.problems, readable: true };
}

const QUOTE = 34;
const COMMA = 44;
const COLON = 58;
const BACKSLASH = 92;
const OPEN_LIST = 91;
const CLOSE_LIST = 93;
const OPEN_OBJECT = 123;
const CLOSE_OBJECT = 125;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;
const ESCAPE = /["\\/bfnrt]|u[0-9a-fA-F]{4}/y;

/** An open list or object. `at` is the key or index of the member being read. */
interface Frame {
  readonly keys: Set<string> | undefined;
  at: string | number;
}

/** One walk over a JSON text (RFC 8259) with a stack of its own, so that no depth can exhaust the machine's. */
class Scan {
  readonly problems: Problem[] = [];
  private readonly stack: Frame[] = [];
  private i = 0;
  private values = 0;

  constructor(private readonly text: string) {}

  /** The problem that ends the walk, if one does. */
  run(): Problem | undefined {
    const { text, stack } = this;
    for (;;) {
      const open = stack.at(-1);
      if (open?.keys && open.keys.size > MOST_KEYS)
        return problem(this.steps().slice(0, -1), 'too-many', undefined, { length: open.keys.size, bound: MOST_KEYS });

      // a value, or the end of an empty list or object that was just opened
      const c = this.next();
      if (++this.values > MOST_VALUES) return problem([], 'too-many-values', undefined, { most: MOST_VALUES });
      if (c === OPEN_OBJECT || c === OPEN_LIST) {
        if (stack.length === DEEPEST) return problem(this.steps().slice(0, 8), 'too-deep', undefined, { most: DEEPEST });
        this.i++;
        const isObject = c === OPEN_OBJECT;
        stack.push({ keys: isObject ? new Set() : undefined, at: 0 });
        if (this.next() === (isObject ? CLOSE_OBJECT : CLOSE_LIST)) {
          this.i++;
          stack.pop();
        } else {
          if (isObject && !this.key()) return this.broken();
          continue;
        }
      } else if (c === QUOTE ? !this.string() : !this.match(NUMBER) && !this.match(WORD)) return this.broken();

      // what may follow a value: the ends of the lists and objects around it, then a comma or the end of the text
      for (;;) {
        const after = this.next();
        const frame = stack.at(-1);
        if (!frame) return this.i === text.length ? undefined : this.broken();
        if (after === COMMA) {
          this.i++;
          if (frame.keys) {
            if (!this.key()) return this.broken();
          } else (frame.at as number)++;
          break;
        }
        if (after !== (frame.keys ? CLOSE_OBJECT : CLOSE_LIST)) return this.broken();
        this.i++;
        stack.pop();
      }
    }
  }

  private steps = (): (string | number)[] => this.stack.map((f) => f.at);

  /** Skips white space; the character there, NaN at the end. */
  private next(): number {
    const { text } = this;
    let c = text.charCodeAt(this.i);
    while (c === 32 || c === 10 || c === 13 || c === 9) c = text.charCodeAt(++this.i);
    return c;
  }

  private match(pattern: RegExp): boolean {
    pattern.lastIndex = this.i;
    if (!pattern.test(this.text)) return false;
    this.i = pattern.lastIndex;
    return true;
  }

  private string(): boolean {
    const { text } = this;
    for (this.i++; this.i < text.length; ) {
      const c = text.charCodeAt(this.i);
      if (c < 32) return false;
      this.i++;
      if (c === QUOTE) return true;
      if (c === BACKSLASH && !this.match(ESCAPE)) return false;
    }
    return false;
  }

  private key(): boolean {
    if (this.next() !== QUOTE) return false;
    const from = this.i;
    if (!this.string()) return false;
    const key = JSON.parse(this.text.slice(from, this.i)) as string;
    if (this.next() !== COLON) return false;
    this.i++;
    const frame = this.stack.at(-1)!;
    frame.at = key;
    if (FORBIDDEN.has(key)) this.tell('forbidden-key', key);
    else if (frame.keys!.has(key)) this.tell('duplicate-key', key);
    frame.keys!.add(key);
    return true;
  }

  private tell(code: 'forbidden-key' | 'duplicate-key', key: string): void {
    this.problems.push(problem(this.steps(), code, undefined, { key, ...this.place() }));
  }

  private line = 1;
  private lineStart = 0;
  private nextBreak: number | undefined;

  /** Line and column, counted from one, going on from where it was asked last. */
  private place(): { line: number; column: number } {
    const breakFrom = (from: number): number => {
      const at = this.text.indexOf('\n', from);
      return at < 0 ? Infinity : at;
    };
    this.nextBreak ??= breakFrom(0);
    while (this.nextBreak < this.i) {
      this.line++;
      this.lineStart = this.nextBreak + 1;
      this.nextBreak = breakFrom(this.lineStart);
    }
    return { line: this.line, column: this.i - this.lineStart + 1 };
  }

  private broken(): Problem {
    const found = this.i < this.text.length ? String.fromCodePoint(this.text.codePointAt(this.i)!) : undefined;
    return problem([], 'not-json', found, this.place());
  }
}
