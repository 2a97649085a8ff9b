import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { cardScene, type CardWords } from '#section/card.ts';
import { toSvg, type Mark, type Scene } from '#section/scene.ts';
import { machineA, result } from '../support/sample.ts';

const words: CardWords = {
  left: 'LEFT',
  right: 'RIGHT',
  behind: 'from behind,',
  facing: 'as facing forward',
  shut: 'SHUT',
  sideOff: 'SIDE OFF',
  noSize: 'no size',
  colour: (name) => name,
  turned: (degrees) => `${degrees > 0 ? 'up' : 'down'} ${Math.abs(degrees)}°`
};
const demo = (name: string, machine?: string): Result => {
  const doc = JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')) as Document;
  const block = doc.blocks[0]!;
  return evaluate({ ...doc, blocks: [{ ...block, machine: machine ?? block.machine }] }, block.id, block.rungs.at(-1)!.id) as Result;
};
const turned = () => result({ setting: { nozzles: [{ position: 'L1', open: false }, { position: 'R1', open: false }, { position: 'L2', swivelDeg: 10 }, { position: 'R3', swivelDeg: -5 }] } });

const SCENES: Readonly<Record<string, () => Scene>> = {
  'card-apple': () => cardScene(demo('lower-bench').sprayer, words),
  'card-cherry-tower': () => cardScene(demo('cherry-wall').sprayer, words),
  'card-cherry-spouts': () => cardScene(demo('cherry-wall', 'spouts-6').sprayer, words),
  'card-citrus-phone': () => cardScene(demo('citrus-globes').sprayer, words, true),
  'card-shut-and-turned': () => cardScene(turned().sprayer, words)
};
const flat = (marks: readonly Mark[]): Mark[] => marks.flatMap((m) => [m, ...flat(m.children ?? [])]);
const texts = (scene: Scene) => flat(scene.marks).filter((m) => m.tag === 'text');
/** The line of one nozzle: its marks and what it says. */
const nozzle = (scene: Scene, id: string) => scene.marks.find((m) => m.cls?.startsWith('card-nozzle') && flat([m]).some((each) => each.cls === 'card-id' && each.text === id))!;
const said = (m: Mark) => flat([m]).flatMap((each) => (each.tag === 'text' ? [each.text] : []));

describe('the card’s diagram as text', () => {
  it.each(Object.entries(SCENES))('%s', (name, make) => {
    const text = toSvg(make(), name);
    const file = `tests/scenes/golden/${name}.svg.txt`;
    if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(file, text);
    expect(text).toBe(readFileSync(file, 'utf8'));
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('what the diagram shows', () => {
  it('has a line for each nozzle, the driver’s left on the left, highest first', () => {
    const scene = SCENES['card-apple']!();
    const ids = texts(scene).filter((m) => m.cls === 'card-id');
    expect(ids.map((m) => m.text)).toEqual(['L8', 'L7', 'L6', 'L5', 'L4', 'L3', 'L2', 'L1', 'R8', 'R7', 'R6', 'R5', 'R4', 'R3', 'R2', 'R1']);
    for (const m of ids) expect(Number(m.attrs!['x']) < scene.width / 2).toBe(m.text!.startsWith('L'));
    expect(texts(scene).find((m) => m.text === 'LEFT')!.attrs!['x']).toBe(0);
  });
  it('bars a shut nozzle, in its line and on the machine, and says so; an open one has its size, colour and cone', () => {
    const scene = SCENES['card-shut-and-turned']!();
    const shut = nozzle(scene, 'L1');
    expect(said(shut)).toEqual(['L1', 'SHUT']);
    expect(flat([shut]).filter((m) => m.cls === 'card-bars')).toHaveLength(2);
    expect(flat([shut]).filter((m) => m.cls === 'card-cone' || m.cls === 'card-open')).toHaveLength(0);
    const size = machineA().nozzles.find((n) => n.id === 'L2')!.size;
    const open = nozzle(scene, 'L2');
    expect(said(open).slice(0, 2)).toEqual(['L2', size]);
    expect(said(open)[2]).toMatch(/, up 10°$/);
    expect(flat([open]).filter((m) => m.cls === 'card-cone')).toHaveLength(1);
    expect(said(nozzle(scene, 'R3'))[2]).toMatch(/, down 5°$/);
  });
  it('says when a whole side does not spray', () => {
    const scene = cardScene(result({ block: { pattern: { kind: 'one-side-one-face', side: 'left' } } }).sprayer, words);
    expect(said(nozzle(scene, 'R2'))).toEqual(['R2', 'SIDE OFF']);
    expect(said(nozzle(scene, 'L2'))[1]).not.toBe('SIDE OFF');
  });
  it('never rests on colour: whatever is filled with a colour is named by a word', () => {
    for (const make of Object.values(SCENES))
      for (const m of make().marks.filter((each) => each.cls === 'card-nozzle open')) {
        const filled = flat([m]).filter((each) => each.attrs?.['fill'] !== undefined && !['#fff', 'none'].includes(String(each.attrs['fill'])));
        if (filled.length > 0) expect(said(m).length).toBe(3);
      }
  });
  it.each(['citrus-globes', 'cherry-wall', 'lower-bench'])('%s: everything lies inside the picture', (name) => {
    for (const narrow of [false, true]) {
      const scene = cardScene(demo(name).sprayer, words, narrow);
      for (const m of flat(scene.marks)) {
        for (const [k, most] of [['x', scene.width], ['cx', scene.width], ['x1', scene.width], ['x2', scene.width], ['y', scene.height], ['cy', scene.height], ['y1', scene.height], ['y2', scene.height]] as const) {
          const v = m.attrs?.[k];
          if (v !== undefined) expect(Number(v) >= 0 && Number(v) <= most, `${m.cls} ${k}=${v}`).toBe(true);
        }
      }
    }
  });
});
