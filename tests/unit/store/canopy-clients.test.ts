import { describe, expect, it } from 'vitest';
import { LaserClient } from '#store/laser/client.ts';
import type { Judged, Message as LaserMessage, Task as LaserTask } from '#store/laser/messages.ts';
import { PhotoClient } from '#store/photo/client.ts';
import type { Message, Opened, Task } from '#store/photo/messages.ts';

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
    const fake = new Fake<Task, Message>();
    const heard: (string | number)[] = [];
    const client = new PhotoClient((h) => heard.push(h[0]!), (e) => heard.push(e.message), (d) => heard.push(`at ${d}`), () => fake);
    return { fake, heard, client };
  };
  it('is opened with progress; of counts asked for meanwhile the last alone is heard', async () => {
    const { fake, heard, client } = started();
    const opening = client.open(new Blob(['x']));
    fake.says({ kind: 'progress', done: 0.5 });
    fake.says({ kind: 'opened', opened: OPENED });
    expect(await opening).toBe(OPENED);
    for (const left of [0.1, 0.2, 0.3]) client.count(frame(left));
    expect(fake.asked).toHaveLength(2);
    fake.says({ kind: 'counted', histograms: Uint32Array.of(1) });
    expect(fake.asked.at(-1)).toMatchObject({ kind: 'count', asked: { frame: { left: 0.3 } } });
    fake.says({ kind: 'counted', histograms: Uint32Array.of(3) });
    expect(heard).toEqual(['at 0.5', 3]);
  });
  it('that is stopped ends its worker and is refused by name', async () => {
    const { fake, client } = started();
    const opening = client.open(new Blob(['x']));
    client.close();
    expect([await opening, fake.ended]).toEqual([expect.objectContaining({ code: 'photo-cancelled' }), true]);
  });
  it('whose worker fails, rejects while it is read, and is told of after', async () => {
    const before = started();
    const opening = before.client.open(new Blob(['x']));
    before.fake.fails('out of memory');
    await expect(opening).rejects.toThrow('out of memory');
    const after = started();
    const done = after.client.open(new Blob(['x']));
    after.fake.says({ kind: 'opened', opened: OPENED });
    await done;
    after.fake.fails('');
    expect([after.heard, after.fake.ended]).toEqual([['the worker could not be started'], true]);
  });
});

describe('laser points', () => {
  const started = () => {
    const fake = new Fake<LaserTask, LaserMessage>();
    const heard: (string | number)[] = [];
    const client = new LaserClient((j) => heard.push(j.tooFar), (e) => heard.push(e.message), (d) => heard.push(`at ${d}`), () => fake);
    return { fake, heard, client };
  };
  const asked = (bearingDeg: number) => ({ placement: { unitM: 1, originX: 0, originY: 0, groundZ: 0, bearingDeg }, rules: { platform: null, groundM: 0, side: 'both' as const } });
  it('are judged by the last rules that were asked for', async () => {
    const { fake, heard, client } = started();
    const opening = client.open(new Blob(['x']), 'a.las');
    fake.says({ kind: 'opened', opened: { refused: null, problems: [] } });
    await opening;
    for (const deg of [1, 2, 3]) client.judge(asked(deg));
    fake.says({ kind: 'judged', judged: { tooFar: 1 } as Judged });
    expect(fake.asked.at(-1)).toMatchObject({ asked: { placement: { bearingDeg: 3 } } });
    fake.says({ kind: 'judged', judged: { tooFar: 3 } as Judged });
    expect(heard).toEqual([3]);
  });
  it('that are stopped end their worker', async () => {
    const { fake, client } = started();
    const opening = client.open(new Blob(['x']), 'a.las');
    client.close();
    expect([await opening, fake.ended]).toEqual([null, true]);
  });
});
