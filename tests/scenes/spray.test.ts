import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { SprayBalance } from '#core/spray/types.ts';
import { airLines } from '#section/air-lines.ts';
import { depositProfile } from '#section/deposit-profile.ts';
import { dropsAt, passSeconds, stillDrops } from '#section/drops.ts';
import { edgesOf } from '#section/edges.ts';
import { frameFor, type Frame } from '#section/frame.ts';
import { losses, LOSSES } from '#section/losses.ts';
import { toSvg, type Mark } from '#section/scene.ts';
import { sprayOver, sprayUnder, type SprayDrawn, type SprayRoom } from '#section/spray-layer.ts';
import { STEPS, sprayMap } from '#section/spray-map.ts';
import { spraySheet } from '#section/spray-sheet.ts';
import { layerWords } from '#words/en/spray/layer.ts';
import { sectionWords } from '#words/en/section.ts';
import { result } from '../support/sample.ts';
import { SHARES, sprayBalance, sprayBand, sprayCaseOf, sprayPicture } from '../support/spray-drawn.ts';

const words = layerWords('metric');
const extent = { rowSpacingM: 4, widthM: 1.2, heightM: 3 };
const laptop = frameFor(960, 560, extent);
const phone = frameFor(390, 384, extent);
const room: SprayRoom = { machineTopM: 1.5, bodyM: 0.65, widthM: 1.2, topM: 3 };
const place = { ...room, outline: sprayCaseOf().canopy.outline, trunkX: 2 };
const drawn = (more: Partial<SprayDrawn> = {}): SprayDrawn => ({ case: sprayCaseOf(), balance: sprayBalance(), picture: sprayPicture(), band: sprayBand(), ghost: null, alone: null, ...more });

const flat = (marks: readonly Mark[]): Mark[] => marks.flatMap((m) => [m, ...flat(m.children ?? [])]);
const all = (d: SprayDrawn, frame: Frame, r = room) => [...sprayUnder(d, r.widthM, words, frame), ...sprayOver(d, r, words, frame)];
const scene = (d: SprayDrawn, frame: Frame, r = room) => ({ width: frame.width, height: frame.height, marks: all(d, frame, r), handles: [], fields: [], spots: [] });
const texts = (marks: readonly Mark[]) => flat(marks).flatMap((m) => m.text ?? []);
const byClass = (marks: readonly Mark[], cls: string) => flat(marks).filter((m) => m.cls?.split(' ').includes(cls));
/** Every number of a path, by pairs. */
const points = (d: string): [number, number][] => [...d.matchAll(/(-?[\d.]+)[ ,](-?[\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])]);

const DRAWINGS = {
  'spray-laptop': () => scene(drawn({ ghost: sprayBalance({ heights: sprayBalance().heights.map((h) => ({ ...h, depositUlPerCm2: 0.3 })) }) }), laptop),
  'spray-phone': () => scene(drawn({ band: null }), phone),
  'spray-alone-tall': () => scene(drawn({ alone: 'R2' }), laptop, { ...room, machineTopM: 3.2 })
};

describe('the spray as text', () => {
  it.each(Object.entries(DRAWINGS))('%s', (name, make) => {
    const text = toSvg(make(), name);
    const file = `tests/scenes/golden/${name}.svg.txt`;
    if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(file, text);
    expect(text).toBe(readFileSync(file, 'utf8'));
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('shading', () => {
  it('covers less the denser it is, and is made once for a picture', () => {
    const { map } = sprayPicture();
    const steps = sprayMap(map, 2.6, laptop).children!;
    expect(steps).toHaveLength(STEPS.length);
    const wide = (m: Mark) => {
      const xs = points(String(m.attrs!['d'])).map(([x]) => x);
      return xs.length > 0 ? Math.max(...xs) - Math.min(...xs) : 0;
    };
    for (let i = 1; i < steps.length; i++) expect(wide(steps[i]!)).toBeLessThanOrEqual(wide(steps[i - 1]!));
    expect(sprayMap(map, 2.6, laptop).children).toBe(steps);
  });
  it('is drawn to scale: a plume to one side of the middle stays there', () => {
    const { map } = sprayPicture();
    const right = { ...map, density: map.density.map((v, i) => (i % map.columns < map.columns / 2 + 4 ? 0 : v)) };
    const group = sprayMap(right, 2.6, laptop);
    const [, tx, sx] = /translate\((-?[\d.]+) .*scale\((-?[\d.]+) /.exec(String(group.attrs!['transform']))!.map(Number);
    for (const [x] of group.children!.flatMap((m) => points(String(m.attrs!['d'])))) expect(tx! + x * sx!).toBeGreaterThan(laptop.x(0));
  });
  it('draws nothing of an empty field', () => {
    const empty = { xM: 0, zM: 0, cellM: 0.1, columns: 0, rows: 0, density: new Float32Array(0) };
    expect(sprayMap(empty, 2.6, laptop).children).toEqual([]);
  });
});

describe('air', () => {
  const straight = (speeds: readonly number[]) => [{ side: 'right' as const, points: speeds.map((speedMPerS, i) => ({ xM: 0.5 + 0.2 * i, zM: 1, speedMPerS, halfWidthM: 0.1 })) }];
  it('is not drawn below 2 m/s, and a line ends where it slows down to that', () => {
    const lines = byClass([airLines(straight([12, 6, 3, 1]), { trunkX: 2, outerM: 2.6, skirtM: 0.5 }, words.speed, laptop)], 'air');
    const ends = lines.flatMap((m) => points(String(m.attrs!['d'])).map(([x]) => x));
    // Half-way between the third point, at 3 m/s, and the fourth, at 1 m/s.
    expect(Math.max(...ends)).toBeCloseTo(laptop.x(0.5 + 0.2 * 2.5), 1);
    expect(byClass([airLines(straight([1.9, 1]), { trunkX: 2, outerM: 2.6, skirtM: 0.5 }, words.speed, laptop)], 'air').every((m) => m.attrs!['d'] === '')).toBe(true);
  });
  it('changes its weight where a class is passed', () => {
    const [fastest, fast, slow, slowest] = byClass([airLines(straight([30, 10, 5, 2]), { trunkX: 2, outerM: 2.6, skirtM: 0.5 }, words.speed, laptop)], 'air').map((m) => points(String(m.attrs!['d'])));
    expect(fastest!.at(-1)![0]).toBeCloseTo(laptop.x(0.6), 1);
    expect(fast![0]![0]).toBeCloseTo(laptop.x(0.6), 1);
    expect(fast!.at(-1)![0]).toBeCloseTo(laptop.x(0.7), 1);
    expect(slow!.at(-1)![0]).toBeCloseTo(laptop.x(0.9), 1);
    expect(slowest!.at(-1)![0]).toBeCloseTo(laptop.x(1.1), 1);
  });
  it('says a speed with its unit where the line has it', () => {
    const marks = [airLines(straight([30, 26, 22, 18, 14]), { trunkX: 2, outerM: 2.6, skirtM: 0.5 }, words.speed, laptop)];
    const [figure] = byClass(marks, 'air-speed');
    expect(figure!.text).toBe('20\u00a0m/s');
    expect(figure!.attrs!['x']).toBeCloseTo(laptop.x(1), 1);
    expect(texts([airLines(straight([30, 26, 22, 18, 14]), { trunkX: 2, outerM: 2.6, skirtM: 0.5 }, layerWords('us').speed, laptop)])[0]).toMatch(/mph$/);
  });
  it('stays inside the drawing', () => {
    const [left, right] = edgesOf(laptop, 2.6);
    for (const [x, y] of byClass(all(drawn(), laptop), 'air').flatMap((m) => points(String(m.attrs!['d'])))) {
      expect(x).toBeGreaterThanOrEqual(left);
      expect(x).toBeLessThanOrEqual(right);
      expect(y).toBeLessThanOrEqual(laptop.groundY);
    }
  });
});

describe('deposit by height', () => {
  const profile = (balance: SprayBalance, other: SprayBalance | null = null) => depositProfile(balance, other, 2, 0.6, words, laptop);
  const path = (m: Mark, cls: string) => points(String(byClass([m], cls)[0]!.attrs!['d']));
  it('stands on the heights of the crown, outward from the right-hand trunk line', () => {
    const line = path(profile(sprayBalance()), 'deposit-line');
    expect(Math.max(...line.map(([, y]) => y))).toBeCloseTo(laptop.z(0.5), 1);
    expect(Math.min(...line.map(([, y]) => y))).toBeCloseTo(laptop.z(3), 1);
    for (const [x] of line) expect(x).toBeGreaterThanOrEqual(laptop.x(2));
  });
  it('twice the deposit lies twice as far out on the same scale', () => {
    const even = (ul: number) => sprayBalance().heights.map((h) => ({ ...h, depositUlPerCm2: h.fromM < 1.75 ? ul : 2 }));
    const foot = (ul: number) => Math.max(...path(profile(sprayBalance({ heights: even(ul), depositUlPerCm2: 1.5, cv: 0.3 })), 'deposit-line').filter(([, y]) => y > laptop.z(0.6)).map(([x]) => x)) - laptop.x(2);
    expect(foot(1) / foot(0.5)).toBeCloseTo(2, 2);
  });
  it('bands the mean by one standard deviation to each side', () => {
    const m = profile(sprayBalance({ depositUlPerCm2: 0.4, cv: 0.25 }));
    const band = byClass([m], 'deposit-band')[0]!.attrs!;
    const mean = Number(byClass([m], 'deposit-mean')[0]!.attrs!['x1']) - laptop.x(2);
    expect(Number(band['x']) - laptop.x(2)).toBeCloseTo(mean * 0.75, 1);
    expect(Number(band['width'])).toBeCloseTo(mean * 0.5, 1);
  });
  it('is not drawn where nothing can catch, and wood is called wood', () => {
    expect(profile(sprayBalance({ depositUlPerCm2: null, cv: null, heights: sprayBalance().heights.map((h) => ({ ...h, areaIndex: 0, depositUlPerCm2: null })) })).children).toEqual([]);
    expect(texts([profile(sprayBalance({ bare: true }))])).toContain('deposit on wood');
    expect(texts([profile(sprayBalance())])).toContain('deposit on leaf');
  });
  it('draws another one beside it only where both are on leaf and on one scale', () => {
    const other = (more: Partial<SprayBalance>) => byClass([profile(sprayBalance(), sprayBalance(more))], 'deposit-other');
    expect(other({})).toHaveLength(1);
    expect(other({ bare: true })).toHaveLength(0);
    expect(other({ heights: sprayBalance().heights.map((h) => ({ ...h, depositUlPerCm2: 40 })) })).toHaveLength(0);
  });
});

describe('losses', () => {
  /** Widest extent of an arrow's shaft across its way: its first and last corner are the ends of its tail. */
  const width = (m: Mark) => {
    const corners = points(String(byClass([m], 'arrow-shape')[0]!.attrs!['d']));
    return Math.hypot(corners[0]![0] - corners.at(-1)![0], corners[0]![1] - corners.at(-1)![1]);
  };
  const of = (marks: Mark, loss: string) => byClass([marks], `loss-${loss}`)[0]!;
  it('are as wide as their share, each with its name and percent', () => {
    const marks = losses(SHARES, place, words, laptop);
    expect(width(of(marks, 'over')) / width(of(marks, 'through'))).toBeCloseTo(0.12 / 0.1, 2);
    expect(width(of(marks, 'ground-in')) / width(of(marks, 'ground-out'))).toBeCloseTo(0.16 / 0.05, 1);
    for (const loss of LOSSES) expect(texts([of(marks, loss)]).join(' ')).toContain(words.share(SHARES[loss]));
  });
  it('leave out what is not lost', () => {
    const marks = losses({ ...SHARES, over: 0, dried: 0.0001 }, place, words, laptop);
    expect(marks.children!.map((m) => m.key)).toEqual(['loss-through', 'loss-ground-in', 'loss-ground-out']);
  });
  it.each([['laptop', laptop], ['phone', phone]] as const)('stand inside the drawing of a %s', (_, frame) => {
    for (const m of flat([losses(SHARES, place, words, frame)])) {
      for (const [x, y] of points(String(m.attrs?.['d'] ?? ''))) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(frame.width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(frame.groundY);
      }
    }
  });
});

describe('the share on the trees', () => {
  it('stands there with its band, and with what is known of it while that is worked out', () => {
    expect(texts(all(drawn(), laptop))).toEqual(expect.arrayContaining(['on the trees', '54\u00a0%', '39 to 69\u00a0%']));
    expect(texts(all(drawn({ band: null }), laptop))).toContain('at least ± 15');
  });
  it('a nozzle alone has its own, and the losses are its own as well', () => {
    const said = texts(all(drawn({ alone: 'R2' }), laptop));
    expect(said).toEqual(expect.arrayContaining(['R2 alone, on the trees', '48\u00a0%', 'all nozzles 54\u00a0%', '39 to 69\u00a0%', '18\u00a0%']));
    expect(said.join()).not.toContain('12\u00a0%');
  });
});

describe('drops', () => {
  const { tracks } = sprayPicture();
  const dots = (paths: readonly string[]) => paths.flatMap((d) => points(d));
  it('fly on, then are gone', () => {
    const at = (s: number) => dots(dropsAt(tracks, s, 2.6, laptop));
    expect(at(0.02).length).toBeGreaterThan(0);
    const far = (s: number) => Math.max(...at(s).map(([x]) => Math.abs(x - laptop.x(0))));
    expect(far(0.3)).toBeGreaterThan(far(0.1));
    expect(at(passSeconds(tracks) + 0.01)).toEqual([]);
    expect(dots(dropsAt([], 0.2, 2.6, laptop))).toEqual([]);
  });
  it('lie between two points of their way', () => {
    // 6 m/s outward from 0.55 m; 0.06 s is half-way between two points 0.04 s apart. Drops that left later are nearer.
    const [first] = dots(dropsAt(tracks.filter((t) => t.side === 'right' && t.dropUm === 80), 0.06, 2.6, laptop));
    expect(first![0]).toBeCloseTo(laptop.x(0.55 + 6 * 0.06), 1);
  });
  it('stand at a few instants where nothing is to move', () => {
    expect(dots(stillDrops(tracks, 2.6, laptop)).length).toBeGreaterThan(tracks.length);
  });
});

describe('the sheet', () => {
  const sheet = (system: 'metric' | 'us' = 'metric') =>
    spraySheet(result({ canopy: { widthM: 1.2 } }), null, drawn(), room, system, {
      section: sectionWords,
      spray: layerWords(system),
      measure: (id, v) => [id, `${v.toFixed(2)} m`],
      length: (m) => `${m.toFixed(4)}`,
      caption: ['a title', 'a line']
    });
  it('has a scale bar as long as it says, at the scale of the drawing', () => {
    const { marks, width } = sheet();
    expect(width).toBe(1200);
    const bar = ['scale-dark', 'scale-light'].map((c) => Number(byClass(marks, c)[0]!.attrs!['width'])).reduce((a, b) => a + b, 0);
    // Trunk lines stand 4 m apart: the dimension between them is on the same sheet.
    const spacing = byClass(marks, 'dimension-line')[0]!.attrs!;
    expect((Number(spacing['x2']) - Number(spacing['x1'])) / bar).toBeCloseTo(4, 1);
    expect(texts(marks)).toContain('1.0000');
    expect(texts(sheet('us').marks)).toContain('0.9144');
  });
  it('writes measurements and caption, and leaves out what straight lines tell', () => {
    const { marks } = sheet();
    expect(texts(marks)).toEqual(expect.arrayContaining(['a title', 'a line', 'height', '3.00 m', 'spacing', '4.00 m']));
    expect(byClass(marks, 'ray')).toEqual([]);
    expect(byClass(marks, 'spray-step').length).toBe(STEPS.length);
    expect(toSvg(sheet(), 'x')).not.toMatch(/NaN|Infinity|undefined/);
  });
});
