import { group, toSvg, type Scene } from '#section/scene.ts';
import { pngOf } from '../spray/png.ts';
import { styleFor } from '../spray/sheet-style.ts';
import { unmarked } from '#words/bidi.ts';
import { saveFile } from '#workspace/files.ts';

/** Margin about a drawing that goes out by itself, px. */
const MARGIN = 14;

/** A drawing with its style in it, so that it stands alone and looks as the screen does. */
export function pictureOf(title: string, scene: Scene): { readonly svg: string; readonly width: number; readonly height: number } {
  const alone: Scene = {
    ...scene,
    width: Math.ceil(scene.width + 2 * MARGIN),
    height: Math.ceil(scene.height + 2 * MARGIN),
    marks: [group('plot-layer', scene.marks, { transform: `translate(${MARGIN} ${MARGIN})` })]
  };
  const { width, height } = alone;
  return { svg: unmarked(toSvg(alone, title, styleFor(toSvg(alone, title)))), width, height };
}

/** Hands the drawing over as a file. Rejects where the browser cannot draw it. */
export async function savePicture(kind: 'svg' | 'png', file: string, title: string, scene: Scene): Promise<string> {
  const { svg, width, height } = pictureOf(title, scene);
  const name = `${file}.${kind}`;
  if (kind === 'svg') saveFile(name, svg, 'image/svg+xml');
  else saveFile(name, await pngOf(svg, width, height), 'image/png');
  return name;
}

export { fileStem as fileName } from '#workspace/file-name.ts';
