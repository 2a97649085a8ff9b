import { VERSION, type Document } from '#core/setting/document.ts';
import type { Steps } from '../history.ts';
import type { Place } from '../place.ts';
import type { Step } from '../workspace.svelte.ts';
import { applied, difference, type Change, type Plain } from './patch.ts';

/** Steps that outlive a reload, and the characters that they may take. The nearest stay. */
const MOST_STEPS = 100;
const MOST_CHARACTERS = 400_000;

/** The format of documents that steps were made in; others do not fit. */
export const STEP_FORMAT = VERSION;

/** The way from one state to the next further one, as text. Edits leave states as they are, so a way is worked out once. */
const known = new WeakMap<Document, WeakMap<Document, string>>();

function wayTo(from: Document, to: Step): string {
  const ways = known.get(from) ?? new WeakMap<Document, string>();
  known.set(from, ways);
  const way = ways.get(to.document) ?? JSON.stringify(difference(from as unknown as Plain, to.document as unknown as Plain));
  ways.set(to.document, way);
  return `[${way},${JSON.stringify(to.place)}]`;
}

function ways(from: Document, steps: readonly Step[], room: number): { readonly text: string; readonly length: number } {
  const out: string[] = [];
  let length = 0;
  let now = from;
  for (const step of steps.toReversed().slice(0, MOST_STEPS)) {
    const way = wayTo(now, step);
    if ((length += way.length) > room) break;
    out.push(way);
    now = step.document;
  }
  return { text: `[${out.join(',')}]`, length };
}

/** Steps back and forward from a document, as text: the nearest first. */
export function packed(now: Document, { past, future }: Steps<Step>): string {
  const back = ways(now, past, MOST_CHARACTERS);
  return `{"past":${back.text},"future":${ways(now, future, MOST_CHARACTERS - back.length).text}}`;
}

/** The states of kept steps; none where they do not fit the document. */
export function unpacked(text: string, now: Document): Steps<Step> | undefined {
  try {
    const kept = JSON.parse(text) as { past: [Change[], Place][]; future: [Change[], Place][] };
    const states = (way: [Change[], Place][]): Step[] => {
      let at = now;
      return way
        .map(([changes, { block, rung, ghost }]) => {
          at = applied(at as unknown as Plain, changes) as unknown as Document;
          if (!Array.isArray(at.blocks) || at.blocks.length === 0) throw new RangeError('no block');
          return { document: at, place: { block, rung, ghost } };
        })
        .reverse();
    };
    return { past: states(kept.past), future: states(kept.future) };
  } catch {
    return undefined;
  }
}
