import type { UnitSystem } from '#core/quantity/units.ts';
import { LEAST_BAND } from '#core/spray/types.ts';
import { valueOf } from '#core/working/answer.ts';
import { toSvg } from '#section/scene.ts';
import { spraySheet } from '#section/spray-sheet.ts';
import { unmarked } from '#words/bidi.ts';
import { layerWords, sheetWords } from '#words/en/spray/layer.ts';
import { sectionWords } from '#words/en/section.ts';
import { formatAmount, formatExact } from '#words/format.ts';
import type { SprayView } from '#workspace/spray.svelte.ts';
import { fileStem } from '#workspace/file-name.ts';
import { pngOf } from './png.ts';
import { roomOf } from './room.ts';
import { styleFor } from './sheet-style.ts';

export const FILES = ['svg', 'png'] as const;
export type FileKind = (typeof FILES)[number];

/** Makes a picture of what is shown and hands it to the user; without an answer there is nothing to save. */
export async function saveSpray(kind: FileKind, spray: SprayView, system: UnitSystem): Promise<void> {
  const made = sheet(spray, system);
  if (!made) return;
  const { block, rung } = spray.workspace;
  const name = fileStem(block.name, rung.name, 'spray');
  if (kind === 'svg') spray.save(`${name}.svg`, made.svg, 'image/svg+xml');
  else spray.save(`${name}.png`, await pngOf(made.svg, made.width, made.height), 'image/png');
}

/** The sheet with its style in it. */
export function sheet(spray: SprayView, system: UnitSystem): { readonly svg: string; readonly width: number; readonly height: number } | null {
  const { answer, band, ghost, workspace } = spray;
  if (!answer) return null;
  const { result, block, rung } = workspace;
  const { setting, machine, sprayer } = result;
  const words = layerWords(system);
  const amount = (v: number | undefined, unit: 'bar' | 'km/h' | 'L/ha' | 'rpm') => formatAmount(v ?? NaN, unit, system);
  const title = `${block.name}, ${rung.name}`;
  const caption = [
    `${title}: ${sheetWords.setting({
      open: sprayer.nozzles.filter((n) => n.spraying).length,
      nozzles: sprayer.nozzles.length,
      pressure: amount(setting.pressureBar, 'bar'),
      speed: amount(setting.speedKmH, 'km/h'),
      volume: amount(valueOf(sprayer.volume), 'L/ha'),
      gear: machine.gears.find((g) => g.id === setting.gear)?.name ?? setting.gear,
      pto: amount(setting.ptoRpm, 'rpm')
    })}`,
    sheetWords.model(words.share(answer.balance.onTrees), band ? words.band(band.onTrees) : words.atLeast(LEAST_BAND), answer.alone),
    sheetWords.rules
  ];
  const scene = spraySheet(result, workspace.ghost, { ...answer, band, ghost }, roomOf(result, workspace.ghost), system, {
    section: { ...sectionWords, figure: (v) => formatExact(v, '1') },
    spray: words,
    measure: (id, value) => [sheetWords.measures[id as keyof typeof sheetWords.measures], formatAmount(value, 'm', system)],
    length: (m) => formatAmount(m, 'm', system),
    caption
  });
  const bare = toSvg(scene, title);
  return { svg: unmarked(toSvg(scene, title, styleFor(bare))), width: scene.width, height: scene.height };
}
