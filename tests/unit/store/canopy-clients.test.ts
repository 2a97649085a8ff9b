import { describe, expect, it } from 'vitest';
import type { Refused } from '#core/working/answer.ts';
import { FileClient, type Message, type Task } from '#store/file/client.ts';
import type { Asked as LaserAsked, Judged, NotOpened, OpenedPoints, Opening as LaserOpening } from '#store/laser/messages.ts';
import type { Asked, Opened, Opening } from '#store/photo/messages.ts';

/** A worker that does what the test says. */
class Fake<T, M> {
  readonly asked: T[] = [];
  ended = false;
  onmessage: ((event: MessageEvent<M>) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  postMessage(task: T): void {
    this.asked.push(task);
  }
  terminate(): void {
    this.ended = true;
  }
  says(data: M): void {
    this.onmessage?.({ data } as MessageEvent<M>);
  }
  fails(message: string): void {
    this.onerror?.({ message } as ErrorEvent);
  }
}

const OPENED: Opened = { width: 2, height: 1, preview: { width: 2, height: 1, rgba: new Uint8ClampedArray(8) } };
const frame = (left: number) => ({ frame: { left, right: 1, top: 0, bottom: 1 }, bands: 1 });

describe('a picture', () => {
  const started = () => {
    const fake = new Fake<Task<Opening, Asked>, Message<Opened | Refused, Uint32Array>>();
    const heard: (string | number)[] = [];
    const client = new FileClient(() => fake, (h: Uint32Array) => heard.push(h[0]!), (e) => heard.push(e.message), (d) => heard.push(`at ${d}`));
    return { fake, heard, client };
  };
  it('is opened with progress; of counts asked for meanwhile the last alone is heard', async () => {
    const { fake, heard, client } = started();
    const opening = client.open({ file: new Blob(['x']) });
    fake.says({ kind: 'progress', done: 0.5 });
    fake.says({ kind: 'opened', opened: OPENED });
    expect(await opening).toBe(OPENED);
    for (const left of [0.1, 0.2, 0.3]) client.ask(frame(left));
    expect(fake.asked).toHaveLength(2);
    fake.says({ kind: 'told', told: Uint32Array.of(1) });
    expect(fake.asked.at(-1)).toMatchObject({ kind: 'ask', asked: { frame: { left: 0.3 } } });
    fake.says({ kind: 'told', told: Uint32Array.of(3) });
    expect(heard).toEqual(['at 0.5', 3]);
  });
  it('that is stopped ends its worker and is told of with nothing', async () => {
    const { fake, client } = started();
    const opening = client.open({ file: new Blob(['x']) });
    client.close();
    expect([await opening, fake.ended]).toEqual([null, true]);
  });
  it('whose worker fails, rejects while it is read, and is told of after', async () => {
    const before = started();
    const opening = before.client.open({ file: new Blob(['x']) });
    before.fake.fails('out of memory');
    await expect(opening).rejects.toThrow('out of memory');
    const after = started();
    const done = after.client.open({ file: new Blob(['x']) });
    after.fake.says({ kind: 'opened', opened: OPENED });
    await done;
    after.fake.fails('');
    expect([after.heard, after.fake.ended]).toEqual([['the worker could not be started'], true]);
  });
});

describe('laser points', () => {
  const started = () => {
    const fake = new Fake<Task<LaserOpening, LaserAsked>, Message<OpenedPoints | NotOpened, Judged>>();
    const heard: (string | number)[] = [];
    const client = new FileClient(() => fake, (j: Judged) => heard.push(j.tooFar), (e) => heard.push(e.message), (d) => heard.push(`at ${d}`));
    return { fake, heard, client };
  };
  const asked = (bearingDeg: number) => ({ placement: { unitM: 1, originX: 0, originY: 0, groundZ: 0, bearingDeg }, rules: { platform: null, groundM: 0, side: 'both' as const } });
  it('are judged by the last rules that were asked for', async () => {
    const { fake, heard, client } = started();
    const opening = client.open({ file: new Blob(['x']), name: 'a.las', wasm: '' });
    fake.says({ kind: 'opened', opened: { refused: null, problems: [] } });
    await opening;
    for (const deg of [1, 2, 3]) client.ask(asked(deg));
    fake.says({ kind: 'told', told: { tooFar: 1 } as Judged });
    expect(fake.asked.at(-1)).toMatchObject({ asked: { placement: { bearingDeg: 3 } } });
    fake.says({ kind: 'told', told: { tooFar: 3 } as Judged });
    expect(heard).toEqual([3]);
  });
  it('that are stopped end their worker', async () => {
    const { fake, client } = started();
    const opening = client.open({ file: new Blob(['x']), name: 'a.las', wasm: '' });
    client.close();
    expect([await opening, fake.ended]).toEqual([null, true]);
  });
});
