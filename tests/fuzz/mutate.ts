import fc from 'fast-check';

const UTF8 = new TextEncoder();
/** What foreign files have hurt readers with: put in anywhere. */
const TRICKS = [
  '__proto__', '"__proto__":{"polluted":1},', 'constructor', '"constructor":{"prototype":{"polluted":1}},', 'hasOwnProperty', 'toString', 'valueOf',
  'NaN', 'Infinity', '-Infinity', '1e999', '-1e-999', '0x10', '1_000', '9'.repeat(400), '-0', '1,5', '1.234.567,8', '٣',
  '=HYPERLINK("x")', '+1+1', '-1+1', '@SUM(A1)', '\t=1', '<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', 'javascript:alert(1)', '${7*7}', '{{7*7}}',
  '\u202e', '\u2066', '\u0000', '\ufeff', '\ufffd', '\ud800', '\u200b', 'e\u0301'.repeat(50), '"', '""', '"\n', '\r', '\n\n', '\r\n', ';', ',', '\t', '|',
  '[', ']', '{', '}', '['.repeat(200), '{"a":'.repeat(200), '(' .repeat(200), '['.repeat(40_000), '"k":1,'.repeat(2000), ','.repeat(5000), 'x'.repeat(20_000),
  'null', 'true', '[]', '{}', '""', '\\u0000', '\\', '../../etc', 'a'.repeat(130)
].map((t) => UTF8.encode(t));
/** The same file in another encoding than it says. */
const reencoded = (bytes: Uint8Array, kind: 'utf16le' | 'latin1'): Uint8Array => new Uint8Array(Buffer.from(Buffer.from(bytes).toString('utf8'), kind));

const joined = (...parts: Uint8Array[]): Uint8Array => new Uint8Array(Buffer.concat(parts));

type Change = (bytes: Uint8Array) => Uint8Array;
const place = (bytes: Uint8Array, at: number): number => Math.floor(at * (bytes.length + 1));

/** One change of a file: small ones often, brutal ones seldom. */
const change = (others: readonly Uint8Array[]): fc.Arbitrary<Change> => {
  const at = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
  const length = fc.oneof({ weight: 4, arbitrary: fc.nat(24) }, { weight: 1, arbitrary: fc.nat(2000) });
  return fc.oneof(
    { weight: 6, arbitrary: fc.tuple(at, fc.constantFrom(...TRICKS)).map(([a, t]): Change => (b) => joined(b.subarray(0, place(b, a)), t, b.subarray(place(b, a)))) },
    { weight: 5, arbitrary: fc.tuple(at, length, fc.constantFrom(...TRICKS)).map(([a, n, t]): Change => (b) => joined(b.subarray(0, place(b, a)), t, b.subarray(place(b, a) + n))) },
    { weight: 5, arbitrary: fc.tuple(at, fc.nat(255)).map(([a, v]): Change => (b) => { const c = b.slice(); if (c.length > 0) c[Math.min(place(c, a), c.length - 1)] = v; return c; }) },
    { weight: 4, arbitrary: fc.tuple(at, length).map(([a, n]): Change => (b) => joined(b.subarray(0, place(b, a)), b.subarray(place(b, a) + n))) },
    { weight: 3, arbitrary: fc.tuple(at, at, length).map(([a, to, n]): Change => (b) => joined(b.subarray(0, place(b, to)), b.subarray(place(b, a), place(b, a) + n), b.subarray(place(b, to)))) },
    { weight: 2, arbitrary: at.map((a): Change => (b) => b.slice(0, place(b, a))) },
    { weight: 1, arbitrary: fc.tuple(at, at, fc.constantFrom(...others)).map(([a, o, other]): Change => (b) => joined(b.subarray(0, place(b, a)), other.subarray(place(other, o)))) },
    { weight: 1, arbitrary: fc.constantFrom<Change>((b) => reencoded(b, 'utf16le'), (b) => reencoded(b, 'latin1'), (b) => joined(b, b), (b) => joined(UTF8.encode('\ufeff'), b)) }
  );
};

/** Bytes that a door may be given: a real file with a few changes, or none of ours at all. */
export const foreign = (files: readonly Uint8Array[]): fc.Arbitrary<Uint8Array> =>
  fc.oneof(
    { weight: 12, arbitrary: fc.tuple(fc.constantFrom(...files), fc.array(change(files), { minLength: 1, maxLength: 4 })).map(([file, all]) => all.reduce((b, c) => c(b), file)) },
    { weight: 1, arbitrary: fc.uint8Array({ maxLength: 400 }) },
    { weight: 1, arbitrary: fc.json({ maxDepth: 6 }).map((t) => UTF8.encode(t)) },
    { weight: 1, arbitrary: fc.string({ maxLength: 400, unit: 'binary' }).map((t) => UTF8.encode(t)) }
  );
