/** Something that went wrong in the page itself. */
export interface Fault {
  readonly message: string;
  /** Where, as the browser tells it. It stays on this device unless the user copies it. */
  readonly trace: string;
}

/** Noise of browsers that is no fault of the page: an observer that comes round again in the next frame, a request that the page itself gave up. */
const NOISE = [/^ResizeObserver loop/, /^Script error\.?$/];

export const faultOf = (error: unknown): Fault => {
  if (error instanceof Error) return { message: error.message || error.name, trace: (error.stack ?? '').slice(0, 4000) };
  return { message: String(error).slice(0, 300), trace: '' };
};

/** The faults of this visit. The first is shown; those that follow are often only its echo. */
export class Faults {
  first = $state.raw<Fault | null>(null);
  count = $state(0);

  note(error: unknown): void {
    const fault = faultOf(error);
    if (NOISE.some((n) => n.test(fault.message)) || (error instanceof DOMException && error.name === 'AbortError')) return;
    this.first ??= fault;
    this.count++;
  }

  /** It was read. The next one is shown again. */
  clear(): void {
    this.first = null;
    this.count = 0;
  }
}
