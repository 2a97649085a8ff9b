import type { Frame } from '#core/canopy/photo/frame.ts';
import type { Refused } from '#core/working/answer.ts';

/** A picture that was read: its size the way up that it is shown, and a smaller one to show. */
export interface Opened {
  readonly width: number;
  readonly height: number;
  readonly preview: { readonly width: number; readonly height: number; readonly rgba: Uint8ClampedArray<ArrayBuffer> };
}

export interface Asked {
  readonly frame: Frame;
  readonly bands: number;
}

/** To the worker: the picture once, then what is to be counted in it. To stop it, the worker is ended. */
export type Task = { readonly kind: 'open'; readonly file: Blob } | { readonly kind: 'count'; readonly asked: Asked };

/** From the worker. Histograms are those of `histogramsOf`. */
export type Message =
  | { readonly kind: 'progress'; readonly done: number }
  | { readonly kind: 'opened'; readonly opened: Opened | Refused }
  | { readonly kind: 'counted'; readonly histograms: Uint32Array };
