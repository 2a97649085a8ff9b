import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StrategiesClient, type Port } from '#store/strategies/client.ts';
import type { Message as AnyMessage } from '#store/asking/client.ts';
import type { Given, Table, Task } from '#store/strategies/messages.ts';
import { document } from '../../support/sample.ts';

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
  break(why: string): void {
    this.onerror?.({ message: why } as ErrorEvent);
  }
}
function started(silentMs?: number) {
  const ports: Told[] = [];
  const client = new StrategiesClient(() => {
    ports.push(new Told());
    return ports.at(-1)!;
  }, silentMs);
  return { client, ports, port: () => ports.at(-1)! };
}
const draws = { document: document(), blockId: 'block', rungId: 'now', draws: 1000, seed: 1 };
const TABLE = { line: new Float64Array(0), problems: [], more: 0, unread: false } as unknown as Table;

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('questions to the comparison of strategies', () => {
  it('no worker before the first question; one serves draws and tables side by side', async () => {
    const { client, ports, port } = started();
    expect(ports).toHaveLength(0);
    const [a, b] = [client.ask('draws', draws), client.ask('table', { from: 'block\n' })];
    const [first, second] = port().tasks;
    port().say({ kind: 'table', number: second!.number, given: TABLE });
    port().say({ kind: 'draws', number: first!.number, given: [] });
    expect([await a, await b]).toEqual([[], TABLE]);
    expect(ports).toHaveLength(1);
  });
  it('a newer question of a kind takes the place of the one that is worked on; the worker is told', async () => {
    const { client, port } = started();
    const old = client.ask('draws', draws);
    const number = port().last.number;
    const fresh = client.ask('draws', { ...draws, seed: 2 });
    expect(await old).toBeNull();
    expect(port().tasks.map((t) => t.kind)).toEqual(['draws', 'drop', 'draws']);
    expect(port().tasks[1]!.number).toBe(number);
    // What the worker had said already is not taken for the new answer.
    port().say({ kind: 'draws', number, given: [] });
    port().say({ kind: 'draws', number: port().last.number, given: { kind: 'refused', code: 'x', path: '', parameters: {} } });
    expect(await fresh).toMatchObject({ code: 'x' });
  });
  it('progress is handed on, to its own question alone', () => {
    const { client, port } = started();
    const [a, b]: [number[], number[]] = [[], []];
    void client.ask('draws', draws, (done) => a.push(done));
    void client.ask('table', { from: '' }, (done) => b.push(done));
    port().say({ kind: 'progress', number: port().tasks[0]!.number, done: 0.25 });
    port().say({ kind: 'progress', number: port().tasks[1]!.number, done: 0.5 });
    expect([a, b]).toEqual([[0.25], [0.5]]);
  });
  it('what is dropped is answered with nothing', async () => {
    const { client, port } = started();
    const asked = client.ask('table', { from: '' });
    client.drop('table');
    client.drop('table');
    expect(await asked).toBeNull();
    expect(port().tasks.map((t) => t.kind)).toEqual(['table', 'drop']);
  });
  it('a fault of one question is its own; a broken worker fails all, and the next question has another', async () => {
    const { client, ports, port } = started();
    const failed = client.ask('draws', draws);
    port().say({ kind: 'failed', number: port().last.number, why: 'no room' });
    await expect(failed).rejects.toThrow('no room');
    const [a, b] = [client.ask('draws', draws), client.ask('table', { from: '' })];
    port().break('gone');
    await expect(a).rejects.toThrow('gone');
    await expect(b).rejects.toThrow('gone');
    expect(ports[0]!.ended).toBe(true);
    void client.ask('draws', draws).catch(() => {});
    expect(ports).toHaveLength(2);
  });
  it('a worker that falls silent is given up; one that tells how far it is is not', async () => {
    const { client, port } = started(1000);
    const asked = client.ask('draws', draws);
    const failing = expect(asked).rejects.toThrow('no answer');
    vi.advanceTimersByTime(900);
    port().say({ kind: 'progress', number: port().last.number, done: 0.1 });
    vi.advanceTimersByTime(900);
    expect(port().ended).toBe(false);
    vi.advanceTimersByTime(200);
    await failing;
    expect(port().ended).toBe(true);
  });
  it('closed, everything is answered with nothing and the worker ended', async () => {
    const { client, port } = started();
    const asked = client.ask('draws', draws);
    client.close();
    expect(await asked).toBeNull();
    expect(port().ended).toBe(true);
  });
  it('a worker that cannot be started fails the question', async () => {
    const client = new StrategiesClient(() => {
      throw new Error('forbidden');
    });
    await expect(client.ask('draws', draws)).rejects.toThrow('the worker could not be started');
  });
});
