import type { Frame } from '#core/canopy/photo/frame.ts';

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

export interface Opening {
  readonly file: Blob;
}
