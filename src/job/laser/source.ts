/** Bytes that are read in pieces, in any order: a file of the page or of the command line. */
export interface Source {
  readonly name: string;
  readonly size: number;
  /** Bytes from one place up to another; fewer where the file ends before. */
  read(from: number, to: number): Promise<Uint8Array>;
}

const PIECE = 1 << 20;

/** The whole of it, piece by piece. */
export async function* piecesOf(source: Source, progress: (done: number) => void = () => {}): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < source.size; at += PIECE) {
    yield await source.read(at, Math.min(source.size, at + PIECE));
    progress(Math.min(1, (at + PIECE) / source.size));
  }
}
