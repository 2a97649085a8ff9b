import { histogramsOf } from '#core/canopy/photo/frame.ts';
import type { Refused } from '#core/working/answer.ts';
import { HEAD_BYTES, readPictureHeader, UNDECODABLE } from '#job/photo/header.ts';
import type { Message, Task } from '../file/client.ts';
import type { Asked, Opened, Opening } from './messages.ts';

/** Reads a picture beside the page's own thread and keeps the brightness of its pixels: nothing of it leaves the device. */
const scope = globalThis as unknown as { onmessage: ((event: MessageEvent<Task<Opening, Asked>>) => void) | null; postMessage(message: Message<Opened | Refused, Uint32Array>, transfer?: Transferable[]): void };

let levels = new Uint8Array(0);
let width = 0;
let height = 0;

/** Rows of pixels that are unpacked at a time. */
const STRIP = 256;
/** Longest side of the picture that is shown. */
const SHOWN_SIDE = 1200;

async function opened(file: Blob): Promise<Opened | Refused> {
  const header = readPictureHeader(new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer()), file.size);
  if ('kind' in header) return header;
  let bitmap: ImageBitmap;
  try {
    // The kind by its own mark, whatever the file is called.
    bitmap = await createImageBitmap(new Blob([file], { type: header.type }), { imageOrientation: 'from-image' });
  } catch {
    return UNDECODABLE;
  }
  try {
    ({ width, height } = bitmap);
    levels = new Uint8Array(width * height);
    const strip = pen(width, Math.min(STRIP, height));
    for (let y = 0; y < height; y += STRIP) {
      const rows = Math.min(STRIP, height - y);
      // What shows through is counted as white paper would be.
      strip.fillRect(0, 0, width, rows);
      strip.drawImage(bitmap, 0, y, width, rows, 0, 0, width, rows);
      const { data } = strip.getImageData(0, 0, width, rows);
      // The blue channel: leaf is darkest there against sky or sheet.
      for (let i = 0, at = y * width; i < rows * width; i++) levels[at + i] = data[4 * i + 2]!;
      scope.postMessage({ kind: 'progress', done: (y + rows) / height });
    }
    const scale = Math.min(1, SHOWN_SIDE / Math.max(width, height));
    const shown = { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
    const small = pen(shown.width, shown.height);
    small.fillRect(0, 0, shown.width, shown.height);
    small.drawImage(bitmap, 0, 0, shown.width, shown.height);
    return { width, height, preview: { ...shown, rgba: small.getImageData(0, 0, shown.width, shown.height).data as Uint8ClampedArray<ArrayBuffer> } };
  } finally {
    bitmap.close();
  }
}

function pen(w: number, h: number): OffscreenCanvasRenderingContext2D {
  const context = new OffscreenCanvas(w, h).getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('no canvas to unpack the picture on');
  context.fillStyle = '#fff';
  return context;
}

/** A fault here is the worker's: the client hears it and ends. */
const fail = (error: unknown): void => {
  setTimeout(() => {
    throw error;
  });
};

scope.onmessage = ({ data: task }) => {
  if (task.kind === 'open') void opened(task.opening.file).then((o) => scope.postMessage({ kind: 'opened', opened: o }, 'preview' in o ? [o.preview.rgba.buffer] : []), fail);
  else {
    const histograms = histogramsOf(levels, width, height, task.asked.frame, task.asked.bands);
    scope.postMessage({ kind: 'told', told: histograms }, [histograms.buffer]);
  }
};
