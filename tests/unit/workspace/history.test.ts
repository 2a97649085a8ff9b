import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { History } from '#workspace/history.ts';

describe('undo and redo', () => {
  it('make the edits of one gesture one step', () => {
    const h = new History<number>();
    h.note(0, 'drag');
    h.note(1, 'drag');
    h.note(2, 'drag');
    expect(h.undo(3)).toBe(0);
    expect(h.canUndo).toBe(false);
    expect(h.redo(0)).toBe(3);
  });
  it('end a gesture by rest, by another gesture, by an edit without one, and by undo', () => {
    const h = new History<string>();
    h.note('a', 'drag');
    h.rest();
    h.note('b', 'drag');
    h.note('c', 'field');
    h.note('d', null);
    h.note('e', null);
    const seen: string[] = [];
    let now = 'f';
    while (h.canUndo) seen.push((now = h.undo(now)));
    expect(seen).toEqual(['e', 'd', 'c', 'b', 'a']);

    const g = new History<string>();
    g.note('a', 'drag');
    expect(g.undo('b')).toBe('a');
    g.note('a', 'drag');
    expect(g.undo('c')).toBe('a');
  });
  it('forget the future once something new is done', () => {
    const h = new History<string>();
    h.note('a', null);
    expect(h.undo('b')).toBe('a');
    expect(h.canRedo).toBe(true);
    h.note('a', null);
    expect(h.canRedo).toBe(false);
    expect(h.redo('c')).toBe('c');
  });
  it('stay where they are at either end', () => {
    const h = new History<string>();
    expect(h.undo('now')).toBe('now');
    expect(h.redo('now')).toBe('now');
    expect([h.canUndo, h.canRedo]).toEqual([false, false]);
  });
  it('keep two hundred steps and no more', () => {
    const h = new History<number>();
    for (let i = 0; i < 1000; i++) h.note(i, null);
    let now = 1000;
    let steps = 0;
    while (h.canUndo) {
      now = h.undo(now);
      steps++;
    }
    expect([steps, now]).toEqual([200, 800]);
  });
  it('any walk of edits, undos and redos agrees with a plain list of states and a place in it', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('edit', 'undo', 'redo'), { maxLength: 80 }), (walk) => {
        const h = new History<number>();
        let states = [0];
        let place = 0;
        let now = 0;
        let next = 1;
        for (const step of walk) {
          if (step === 'edit') {
            h.note(now, null);
            now = next++;
            states = [...states.slice(0, place + 1), now];
            place++;
          } else if (step === 'undo') {
            now = h.undo(now);
            place = Math.max(place - 1, 0);
          } else {
            now = h.redo(now);
            place = Math.min(place + 1, states.length - 1);
          }
          expect(now).toBe(states[place]);
          expect([h.canUndo, h.canRedo]).toEqual([place > 0, place < states.length - 1]);
        }
      })
    );
  });
});

describe('states that were kept', () => {
  it('are asked for whether they fit, and one that does not ends the way back: those behind it were made of it', () => {
    const h = new History({ past: ['a', 'bad', 'c'], future: ['z', 'bad'] }, (s) => s !== 'bad');
    expect(h.undo('d')).toBe('c');
    expect(h.undo('c')).toBe('c');
    expect(h.canUndo).toBe(false);
    expect(h.redo('c')).toBe('d');
    expect(h.redo('d')).toBe('d');
    expect(h.canRedo).toBe(false);
  });
});
