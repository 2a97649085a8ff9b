import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { SprayClient, type Port } from '#store/spray/client.ts';
import type { Message as AnyMessage } from '#store/asking/client.ts';
import type { Given, Task } from '#store/spray/messages.ts';
import { sprayBalance, sprayBand, sprayCaseOf, sprayPicture } from '../../support/spray-drawn.ts';

type Message = AnyMessage<Given>;

/** A worker that answers when it is told to. */
class Told implements Port {
  readonly tasks: Task[] = [];
  ended = false;
  onmessage: Port['onmessage'] = null;
  onerror: Port['onerror'] = null;
  postMessage(task: Task): void {
    this.tasks.push(task);
  }
  terminate(): void {
    this.ended = true;
  }
  say(message: Message): void {
    this.onmessage?.({ data: message } as MessageEvent<Message>);
  }
  get last(): Task {
    return this.tasks.at(-1)!;
  }
  answer(number = this.last.number): void {
    this.say({ kind: 'answer', number, given: { balance: sprayBalance(), picture: sprayPicture() } });
  }
  break(why: string): void {
    this.onerror?.({ message: why } as ErrorEvent);
  }
}

function started(silentMs?: number) {
  const ports: Told[] = [];
  const client = new SprayClient(() => {
    ports.push(new Told());
    return ports.at(-1)!;
  }, silentMs);
  return { client, ports, port: () => ports.at(-1)! };
}
const asked = (volumeLPerHa: number) => ({ case: sprayCaseOf({ volumeLPerHa }), position: null, tracks: false });
const volumes = (tasks: readonly Task[]) => tasks.flatMap((t) => (t.kind === 'drop' ? [] : [t.asked.case.volumeLPerHa]));

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('questions to the spray model', () => {
  it('one worker is started at once, and serves them all', async () => {
    const { client, ports, port } = started();
    expect(ports).toHaveLength(1);
    for (const v of [1, 2, 3]) {
      const given = client.ask('answer', asked(v));
      port().answer();
      expect((await given)!.balance.onTrees).toBe(0.54);
    }
    expect(ports).toHaveLength(1);
    expect(volumes(port().tasks)).toEqual([1, 2, 3]);
  });
  it('while one is worked on, only the last one waits', async () => {
    const { client, port } = started();
    const all = [1, 2, 3, 4].map((v) => client.ask('answer', asked(v)));
    expect(volumes(port().tasks)).toEqual([1]);
    port().answer();
    expect(volumes(port().tasks)).toEqual([1, 4]);
    port().answer();
    const given = await Promise.all(all);
    expect(given.map((g) => g !== null)).toEqual([true, false, false, true]);
  });
  it('an answer goes to its own question', async () => {
    const { client, port } = started();
    const answer = client.ask('answer', asked(1));
    const other = client.ask('balance', { case: sprayCaseOf() });
    const [first, second] = port().tasks;
    port().say({ kind: 'balance', number: second!.number, given: { balance: sprayBalance({ onTrees: 0.2 }) } });
    port().say({ kind: 'answer', number: 999, given: { balance: sprayBalance({ onTrees: 0.9 }), picture: sprayPicture() } });
    port().answer(first!.number);
    expect((await other)!.balance.onTrees).toBe(0.2);
    expect((await answer)!.balance.onTrees).toBe(0.54);
  });
  it('a band is dropped for a newer one, and others are asked while it is worked out', async () => {
    const { client, port } = started();
    const heard: number[] = [];
    const band = client.ask('band', { case: sprayCaseOf() }, (done) => heard.push(done));
    const number = port().last.number;
    port().say({ kind: 'progress', number, done: 0.5 });
    const answer = client.ask('answer', asked(7));
    expect(volumes(port().tasks)).toEqual([360, 7]);
    port().answer();
    await answer;
    const newer = client.ask('band', { case: sprayCaseOf({ volumeLPerHa: 8 }) });
    expect(port().tasks).toContainEqual({ kind: 'drop', number });
    expect(await band).toBeNull();
    port().say({ kind: 'band', number, given: { band: sprayBand({ onTrees: [0, 1] }) } });
    port().say({ kind: 'band', number: port().last.number, given: { band: sprayBand() } });
    expect((await newer)!.band.onTrees).toEqual([0.39, 0.69]);
    expect(heard).toEqual([0.5]);
  });
  it('a question that fails fails alone', async () => {
    const { client, ports, port } = started();
    const bad = client.ask('answer', asked(1));
    const good = client.ask('answer', asked(2));
    port().say({ kind: 'failed', number: port().last.number, why: 'no outline' });
    await expect(bad).rejects.toThrow('no outline');
    port().answer();
    expect(await good).not.toBeNull();
    expect(ports).toHaveLength(1);
  });
  it('a worker that breaks fails what was asked of it; the next question starts another', async () => {
    const { client, ports, port } = started();
    const both = [client.ask('answer', asked(1)), client.ask('answer', asked(2))];
    const settled = Promise.allSettled(both);
    ports[0]!.break('out of memory');
    expect((await settled).map((s) => s.status)).toEqual(['rejected', 'rejected']);
    expect(ports[0]!.ended).toBe(true);
    const again = client.ask('answer', asked(3));
    expect(ports).toHaveLength(2);
    // What the first one still says is not heard.
    ports[0]!.answer(port().last.number);
    port().answer();
    expect(await again).not.toBeNull();
  });
  it('a worker that falls silent is a failure and no hang', async () => {
    const { client, ports, port } = started(1000);
    const lost = Promise.allSettled([client.ask('answer', asked(1))]);
    vi.advanceTimersByTime(999);
    expect(ports[0]!.ended).toBe(false);
    vi.advanceTimersByTime(2);
    expect((await lost)[0]!.status).toBe('rejected');
    expect(ports[0]!.ended).toBe(true);
    const again = client.ask('answer', asked(2));
    port().answer();
    await again;
    vi.advanceTimersByTime(5000);
    expect(ports[1]!.ended).toBe(false);
  });
  it('a worker that cannot be started is a failure', async () => {
    const client = new SprayClient(() => {
      throw new Error('no workers here');
    });
    await expect(client.ask('answer', asked(1))).rejects.toThrow('could not be started');
  });
  it('closed, it answers nothing more', async () => {
    const { client, port } = started();
    const open = client.ask('answer', asked(1));
    client.close();
    expect(await open).toBeNull();
    expect(port().ended).toBe(true);
  });
});
