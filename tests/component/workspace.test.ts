import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

const open = () => new Workspace(demo as unknown as Document);

describe('the open document', () => {
  it('opens on the last rung of its first block, the first rung behind it', () => {
    const w = open();
    expect([w.block.id, w.rung.id, w.ghost?.rung.id]).toEqual(['lower-bench', 'full-leaf', 'mouse-ear']);
  });
  it('an undo goes to where the step was made', () => {
    const w = open();
    w.editCanopy({ heightM: 2 });
    w.goTo('upper-shelf');
    w.undo();
    expect([w.block.id, w.rung.id, w.rung.canopy.heightM]).toEqual(['lower-bench', 'full-leaf', 3.3]);
  });
  it('undoing a new block leaves no trace of it, redoing brings it back into view', () => {
    const w = open();
    w.addBlock('Own', { heightM: 3, widthM: 1 }, 4, 'tower-8', 'Today');
    expect([w.block.name, w.result.machine.id, w.ghost]).toEqual(['Own', 'tower-8', null]);
    w.undo();
    expect([w.block.id, w.rung.id]).toEqual(['lower-bench', 'full-leaf']);
    w.redo();
    expect(w.block.name).toBe('Own');
  });
  it('a new block takes the setting over as far as its machine allows', () => {
    const w = open();
    w.editSetting({ speedKmH: 20, pressureBar: 0.5 });
    w.addBlock('Own', { heightM: 3, widthM: 1 }, 4, 'arc-8', 'Today');
    expect([w.rung.setting.speedKmH, w.rung.setting.pressureBar]).toEqual([9, 4]);
  });
  it('sets the mate on the other side too, unless told not to', () => {
    const w = open();
    w.setOpen('L8', false);
    expect([w.isOpen('L8'), w.isOpen('R8'), w.isOpen('L7')]).toEqual([false, false, true]);
    w.paired = false;
    w.setOpen('L8', true);
    expect([w.isOpen('L8'), w.isOpen('R8')]).toEqual([true, false]);
  });
  it('back to saved gives the saved setting, which later edits do not reach', () => {
    const w = open();
    w.setOpen('L8', false);
    w.saveSetting();
    w.setOpen('L7', false);
    w.backToSaved();
    expect([w.isOpen('L8'), w.isOpen('L7')]).toEqual([false, true]);
  });

  it('whatever is done on the screen, the document reads again and has a result', () => {
    const position = fc.constantFrom('L1', 'L4', 'L8', 'R1', 'R8');
    const act = fc.oneof(
      fc.record({ f: fc.constant('open' as const), position, open: fc.boolean() }),
      fc.record({ f: fc.constant('swivel' as const), position, deg: fc.integer({ min: -15, max: 15 }) }),
      fc.record({ f: fc.constant('size' as const), position, size: fc.constantFrom('01', '015', '02', '04') }),
      fc.record({ f: fc.constant('canopy' as const), heightM: fc.double({ min: 0.2, max: 20, noNaN: true }), skirtM: fc.double({ min: 0, max: 15, noNaN: true }), widthM: fc.double({ min: 0.1, max: 12, noNaN: true }) }),
      fc.record({ f: fc.constant('place' as const), block: fc.constantFrom('lower-bench', 'upper-shelf'), rung: fc.constantFrom('mouse-ear', 'petal-fall', 'full-leaf') }),
      fc.record({ f: fc.constantFrom('add' as const, 'undo' as const, 'redo' as const, 'save' as const, 'back' as const, 'pair' as const) })
    );
    fc.assert(
      fc.property(fc.array(act, { maxLength: 25 }), (acts) => {
        const w = open();
        for (const a of acts) {
          if (a.f === 'open') w.setOpen(a.position, a.open);
          else if (a.f === 'swivel') w.setSwivel(a.position, a.deg, 'drag');
          else if (a.f === 'size') w.setSize(a.position, a.size);
          else if (a.f === 'canopy') w.editCanopy({ heightM: a.heightM, skirtM: a.skirtM, widthM: a.widthM }, 'drag');
          else if (a.f === 'place') (w.goTo(a.block), w.goToRung(a.rung));
          else if (a.f === 'add') w.addBlock('Own', { heightM: 3, widthM: 1 }, 4, 'tower-8', 'Today');
          else if (a.f === 'undo') w.undo();
          else if (a.f === 'redo') w.redo();
          else if (a.f === 'save') w.saveSetting();
          else if (a.f === 'back') w.backToSaved();
          else w.paired = !w.paired;
          expect(w.result.rung).toBe(w.rung);
        }
        const reading = checkDocument(JSON.parse(JSON.stringify(w.document)));
        expect(reading.ok ? [] : reading.problems).toEqual([]);
      }),
      { numRuns: 60 }
    );
  });
});
