import { las, type LasPoint } from './las.ts';

/*
 * Makes LAZ files for tests: points of format 0, single returns, in chunks, as LASzip writes them (Isenburg 2013): each coordinate is predicted from
 * the points before it, and what is left of it is coded arithmetically. Written for these tests alone, to be unpacked by a library that
 * is not ours: if the two disagree, the points come out wrong.
 */

const FULL = 2 ** 32;
const LEAST_LENGTH = 0x01000000;

/** A coder of symbols into bytes. */
class Encoder {
  readonly out: number[] = [];
  private base = 0;
  private length = 0xffffffff;

  bit(m: BitModel, sym: number): void {
    const x = m.prob * (this.length >>> 13);
    if (sym === 0) {
      this.length = x;
      m.zeros++;
    } else {
      this.add(x);
      this.length -= x;
    }
    this.renormed();
    if (--m.until === 0) m.update();
  }
  symbol(m: Model, sym: number): void {
    if (sym === m.counts.length - 1) {
      const x = m.distribution[sym]! * (this.length >>> 15);
      this.add(x);
      this.length -= x;
    } else {
      this.length >>>= 15;
      const x = m.distribution[sym]! * this.length;
      this.add(x);
      this.length = m.distribution[sym + 1]! * this.length - x;
    }
    this.renormed();
    m.counts[sym]!++;
    if (--m.until === 0) m.update();
  }
  bits(count: number, value: number): void {
    if (count > 19) {
      this.raw(16, value & 0xffff);
      value >>>= 16;
      count -= 16;
    }
    this.raw(count, value);
  }
  done(): void {
    const another = this.length > 2 * LEAST_LENGTH;
    this.add(another ? LEAST_LENGTH : LEAST_LENGTH >>> 1);
    this.length = another ? LEAST_LENGTH >>> 1 : LEAST_LENGTH >>> 9;
    this.renormed();
    this.out.push(0, 0);
    if (another) this.out.push(0);
  }
  private raw(count: number, value: number): void {
    this.length >>>= count;
    this.add(value * this.length);
    this.renormed();
  }
  private add(x: number): void {
    const sum = this.base + x;
    if (sum >= FULL) {
      let i = this.out.length - 1;
      while (this.out[i] === 255) this.out[i--] = 0;
      this.out[i]!++;
    }
    this.base = sum % FULL;
  }
  private renormed(): void {
    while (this.length < LEAST_LENGTH) {
      this.out.push(this.base >>> 24);
      this.base = (this.base << 8) >>> 0;
      this.length = (this.length << 8) >>> 0;
    }
  }
}

class BitModel {
  zeros = 1;
  private all = 2;
  prob = 1 << 12;
  private cycle = 4;
  until = 4;
  update(): void {
    if ((this.all += this.cycle) > 1 << 13) {
      this.all = (this.all + 1) >> 1;
      this.zeros = (this.zeros + 1) >> 1;
      if (this.zeros === this.all) this.all++;
    }
    const scale = Math.floor(0x80000000 / this.all);
    this.prob = Math.floor((this.zeros * scale) / 2 ** 18);
    this.cycle = Math.min(64, (5 * this.cycle) >> 2);
    this.until = this.cycle;
  }
}

class Model {
  readonly counts: number[];
  readonly distribution: number[];
  private total = 0;
  private cycle: number;
  until: number;
  constructor(symbols: number) {
    this.counts = new Array<number>(symbols).fill(1);
    this.distribution = new Array<number>(symbols).fill(0);
    this.cycle = symbols;
    this.until = 0;
    this.update();
    this.until = this.cycle = (symbols + 6) >> 1;
  }
  update(): void {
    const { counts } = this;
    if ((this.total += this.cycle) > 1 << 15) {
      this.total = 0;
      for (let n = 0; n < counts.length; n++) this.total += counts[n] = (counts[n]! + 1) >> 1;
    }
    const scale = Math.floor(0x80000000 / this.total);
    let sum = 0;
    for (let k = 0; k < counts.length; k++) {
      this.distribution[k] = Math.floor((scale * sum) / 2 ** 16);
      sum += counts[k]!;
    }
    this.cycle = Math.min((5 * this.cycle) >> 2, (counts.length + 6) << 3);
    this.until = this.cycle;
  }
}

/** Codes what is left of a whole number after it was predicted. */
class Integers {
  k = 0;
  private readonly byContext: readonly Model[];
  private readonly correctors: (Model | undefined)[] = [];
  private readonly first = new BitModel();
  constructor(
    private readonly to: Encoder,
    private readonly width: 16 | 32,
    contexts = 1
  ) {
    this.byContext = Array.from({ length: contexts }, () => new Model(width + 1));
  }
  code(predicted: number, real: number, context = 0): void {
    let c = real - predicted;
    if (this.width === 32) c |= 0;
    else c = ((c + 0x8000) & 0xffff) - 0x8000;
    let k = 0;
    for (let left = c <= 0 ? -c : c - 1; left > 0; left = Math.floor(left / 2)) k++;
    this.k = k;
    this.to.symbol(this.byContext[context]!, k);
    if (k === 0) return this.to.bit(this.first, c);
    if (k === 32) return;
    c = c < 0 ? c + 2 ** k - 1 : c - 1;
    const model = (this.correctors[k] ??= new Model(2 ** Math.min(k, 8)));
    if (k <= 8) return this.to.symbol(model, c);
    const low = 2 ** (k - 8);
    this.to.symbol(model, Math.floor(c / low));
    this.to.bits(k - 8, c % low);
  }
}

/** The running median of five. */
class Median {
  private readonly v = [0, 0, 0, 0, 0];
  private high = true;
  get middle(): number {
    return this.v[2]!;
  }
  add(x: number): void {
    const { v } = this;
    if (this.high) {
      if (x < v[2]!) {
        v[4] = v[3]!;
        v[3] = v[2]!;
        if (x < v[0]!) [v[2], v[1], v[0]] = [v[1]!, v[0]!, x];
        else if (x < v[1]!) [v[2], v[1]] = [v[1]!, x];
        else v[2] = x;
      } else {
        if (x < v[3]!) [v[4], v[3]] = [v[3]!, x];
        else v[4] = x;
        this.high = false;
      }
    } else if (v[2]! < x) {
      v[0] = v[1]!;
      v[1] = v[2]!;
      if (v[4]! < x) [v[2], v[3], v[4]] = [v[3]!, v[4]!, x];
      else if (v[3]! < x) [v[2], v[3]] = [v[3]!, x];
      else v[2] = x;
    } else {
      if (v[1]! < x) [v[0], v[1]] = [v[1]!, x];
      else v[0] = x;
      this.high = true;
    }
  }
}

const RECORD = 20;

/** One chunk: its first record as it is, the others coded. */
function chunk(records: DataView, from: number, to: number): number[] {
  const e = new Encoder();
  const changed = new Model(64);
  const intensities = new Integers(e, 16, 4);
  const classes: (Model | undefined)[] = [];
  const [dx, dy, dz] = [new Integers(e, 32, 2), new Integers(e, 32, 22), new Integers(e, 32, 20)];
  const [mx, my] = [new Median(), new Median()];
  // The first record's intensity and height are not remembered.
  let intensity = 0;
  let height = 0;
  for (let i = from + 1; i < to; i++) {
    const [was, is] = [(i - 1) * RECORD, i * RECORD];
    const now = records.getUint16(is + 12, true);
    const [oldClass, newClass] = [records.getUint8(was + 15), records.getUint8(is + 15)];
    e.symbol(changed, (now === intensity ? 0 : 16) | (oldClass === newClass ? 0 : 8));
    if (now !== intensity) intensities.code(intensity, now, 0);
    intensity = now;
    if (oldClass !== newClass) e.symbol((classes[oldClass] ??= new Model(256)), newClass);
    const step = (at: number): number => records.getInt32(is + at, true) - records.getInt32(was + at, true);
    dx.code(mx.middle, step(0), 1);
    mx.add(step(0));
    dy.code(my.middle, step(4), 1 + (dx.k < 20 ? dx.k & ~1 : 20));
    my.add(step(4));
    const k = (dx.k + dy.k) >> 1;
    const z = records.getInt32(is + 8, true);
    dz.code(height, z, 1 + (k < 18 ? k & ~1 : 18));
    height = z;
  }
  e.done();
  return [...new Uint8Array(records.buffer, records.byteOffset + from * RECORD, RECORD), ...e.out];
}

/** A LAZ file of the points, so many in a chunk. */
export function laz(points: readonly LasPoint[], options: { readonly scale?: number; readonly offset?: readonly [number, number, number]; readonly chunk?: number } = {}): Uint8Array {
  const plain = las(points, options);
  const HEAD = 227;
  const each = options.chunk ?? 50_000;
  const u16 = (v: number): number[] => [v & 255, (v >> 8) & 255];
  const u32 = (v: number): number[] => [...u16(v & 0xffff), ...u16(v >>> 16)];
  const text = (s: string, length: number): number[] => Array.from({ length }, (_, i) => s.charCodeAt(i) || 0);
  const minusOne = new Array<number>(16).fill(255);
  const body = [...u16(2), ...u16(0), 2, 2, ...u16(0), ...u32(0), ...u32(each), ...minusOne, ...u16(1), ...u16(6), ...u16(RECORD), ...u16(2)];
  const record = [...u16(0), ...text('laszip encoded', 16), ...u16(22204), ...u16(body.length), ...text('', 32), ...body];

  const records = new DataView(plain.buffer, HEAD);
  const chunks: number[][] = [];
  for (let from = 0; from < points.length; from += each) chunks.push(chunk(records, from, Math.min(points.length, from + each)));
  const sizes = new Encoder();
  const coder = new Integers(sizes, 32, 2);
  chunks.forEach((c, i) => coder.code(i > 0 ? chunks[i - 1]!.length : 0, c.length, 1));
  sizes.done();

  const pointsAt = HEAD + record.length;
  const table = pointsAt + 8 + chunks.reduce((n, c) => n + c.length, 0);
  const bytes = Uint8Array.from([...plain.subarray(0, HEAD), ...record, ...u32(table), ...u32(0), ...chunks.flat(), ...u32(0), ...u32(chunks.length), ...sizes.out]);
  const v = new DataView(bytes.buffer);
  v.setUint32(96, pointsAt, true);
  v.setUint32(100, 1, true);
  v.setUint8(104, 0x80);
  return bytes;
}
