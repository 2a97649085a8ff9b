import type { Document } from '#core/setting/document.ts';
import type { demoCrops, demoNames } from './en/demo.ts';
import { twinOf } from './translation.ts';

/** What the demo's orchard is called in each language: one that was changed in another language is the demo still. */
export const DEMO_ORCHARDS: readonly string[] = ['Bench orchard', 'Terrassenhof', 'Plantación de la Terraza', 'Verger de la Terrasse', 'Frutteto della Terrazza', 'Pomar do Socalco'];
export const isDemo = ({ name }: Pick<Document, 'name'>): boolean => DEMO_ORCHARDS.includes(name);

type Names = Readonly<Record<string, string | undefined>>;
const twin = (await twinOf('demo')) as { readonly demoNames: Names & Record<keyof typeof demoNames, string>; readonly demoCrops: Names & Record<keyof typeof demoCrops, string> } | undefined;

/** The demo with names in the language that is spoken: figures, ids and all else stand as they are. */
export function inWords(demo: Document): Document {
  if (!twin) return demo;
  const named = <T extends { readonly id: string; readonly name: string }>(it: T): T => ({ ...it, name: twin.demoNames[it.id] ?? it.name });
  return {
    ...demo,
    name: twin.demoNames.orchard,
    blocks: demo.blocks.map((b) => ({ ...named(b), crop: twin.demoCrops[b.id] ?? b.id, rungs: b.rungs.map(named) })),
    machines: demo.machines.map((m) => ({ ...named(m), gears: m.gears.map(named) })),
    labels: demo.labels.map(named)
  };
}
