/** Pixels for each unit of the drawing: sharp on paper at its usual size. */
const SHARP = 2;

/** An SVG that stands alone as PNG. Rejects where the browser cannot draw it. */
export async function pngOf(svg: string, width: number, height: number): Promise<Blob> {
  const image = new Image(width, height);
  // The page's policy lets pictures come from data, not from blobs.
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [width * SHARP, height * SHARP];
  canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((done, failed) => canvas.toBlob((blob) => (blob ? done(blob) : failed(new Error('no picture'))), 'image/png'));
}
