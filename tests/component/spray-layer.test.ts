import { afterEach, describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { frameFor } from '../../src/section/frame.ts';
import { SprayClient, startWorker, type Port } from '../../src/store/spray/client.ts';
import type { Message as AnyMessage } from '../../src/store/asking/client.ts';
import type { Given, Task } from '../../src/store/spray/messages.ts';
import SpraySwitch from '../../src/ui/spray/SpraySwitch.svelte';
import { sheet } from '../../src/ui/spray/files.ts';
import { pngOf } from '../../src/ui/spray/png.ts';
import { SprayView } from '../../src/workspace/spray.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';
import { sprayBalance, sprayBand, sprayPicture } from '../support/spray-drawn.ts';
import SprayDrawing from './SprayDrawing.svelte';

type Message = AnyMessage<Given>;

let shown: SprayView | null = null;
afterEach(() => shown?.hide());

/** A worker that gives an invented answer when it is told to. */
class Held implements Port {
  tasks: Task[] = [];
  held = false;
  onmessage: Port['onmessage'] = null;
  onerror: Port['onerror'] = null;
  /** What the answers say, by the case's litres. */
  onTrees = 0.54;
  postMessage(task: Task): void {
    this.tasks.push(task);
    if (!this.held) setTimeout(() => this.give(task));
  }
  terminate(): void {}
  give(task: Task): void {
    if (task.kind === 'drop') return;
    const { kind, number } = task;
    const balance = sprayBalance({ onTrees: this.onTrees, perNozzle: task.asked.case.nozzles.map((n) => ({ position: n.position, shares: { ...sprayBalance().shares, near: 0.05 } })) });
    const given = { answer: { balance, picture: sprayPicture(kind === 'answer' && task.asked.tracks ? {} : { tracks: [] }) }, balance: { balance }, band: { band: sprayBand() } }[kind];
    this.onmessage?.({ data: { kind, number, given } as Message } as MessageEvent<Message>);
  }
}

async function drawing(port: Port = new Held()) {
  const workspace = new Workspace(demo as unknown as Document);
  const spray = new SprayView(workspace, new SprayClient(() => port));
  shown = spray;
  const saved: { name: string; content: string | Blob }[] = [];
  spray.save = (name, content) => void saved.push({ name, content });
  spray.show();
  const frame = frameFor(960, 560, { rowSpacingM: 3.8, widthM: 1.6, heightM: 3.6 });
  const screen = await render(SprayDrawing, { spray, frame, system: 'metric' });
  const texts = () => [...screen.container.querySelectorAll('svg text')].map((t) => (t.textContent ?? '').replace(/[\u00a0\u202f]/g, ' '));
  const has = (text: string) => expect.poll(texts, { timeout: 5000 }).toContain(text);
  return { workspace, spray, screen, saved, texts, has };
}

describe('the switch', () => {
  it('says whether it is on, and what it could not load', async () => {
    let tries = 0;
    const screen = await render(SpraySwitch, { on: false, ready: () => undefined, toggle: () => (tries++ === 0 ? Promise.reject(new Error('offline')) : Promise.resolve()) });
    const button = screen.getByRole('button', { name: 'Spray', exact: true });
    await expect.element(button).toHaveAttribute('aria-pressed', 'false');
    await button.click();
    await expect.element(screen.getByRole('alert')).toHaveTextContent('could not be loaded');
    await button.click();
    await expect.element(screen.getByRole('alert')).not.toBeInTheDocument();
    await screen.rerender({ on: true });
    await expect.element(button).toHaveAttribute('aria-pressed', 'true');
  });
});

describe('the layer', () => {
  it('shows share, band, losses and deposit of the answer', async () => {
    const { has, texts, screen } = await drawing();
    await has('39 to 69 %');
    expect(texts()).toEqual(expect.arrayContaining(['on the trees', '54 %', 'over the top', '12 %', 'deposit on leaf']));
    expect(screen.container.querySelectorAll('.view .spray-step').length).toBe(6);
  });
  it('keeps the old picture until the new one is there, and dims it when that takes long', async () => {
    const port = new Held();
    const { has, spray, workspace, screen, texts } = await drawing(port);
    await has('54 %');
    port.held = true;
    port.onTrees = 0.31;
    workspace.editCanopy({ heightM: 2.5 });
    await expect.poll(() => spray.stale, { timeout: 3000 }).toBe(true);
    expect(texts()).toContain('54 %');
    await expect.poll(() => screen.container.querySelector('.spray-layer.stale') !== null).toBe(true);
    const last = (kind: Task['kind']) => port.tasks.findLast((t) => t.kind === kind)!;
    port.give(last('answer'));
    await has('31 %');
    expect(spray.stale).toBe(false);
    // The band that was there belongs to the setting before.
    expect(texts()).toContain('at least ± 15');
    port.give(last('band'));
    await has('39 to 69 %');
  });
  it('a nozzle that is pointed at or chosen is shown alone, a shut one is not', async () => {
    const { has, spray, workspace, texts } = await drawing();
    await has('54 %');
    workspace.pointed = 'L3';
    await has('L3 alone, on the trees');
    expect(texts()).toContain('26 %');
    workspace.pointed = null;
    await expect.poll(() => texts().includes('on the trees')).toBe(true);
    workspace.selected = 'R2';
    await has('R2 alone, on the trees');
    workspace.setOpen('R2', false);
    await expect.poll(() => spray.alone).toBeNull();
    await expect.poll(() => texts().includes('on the trees')).toBe(true);
  });
  it('draws nothing where the case is refused, and says why', async () => {
    const { has, screen, workspace, texts } = await drawing();
    await has('54 %');
    workspace.editCanopy({ skirtM: 9 });
    await expect.element(screen.getByRole('alert')).toBeVisible();
    expect(texts()).not.toContain('54 %');
    await expect.element(screen.getByRole('button', { name: 'Play one pass slowly' })).toBeDisabled();
  });
  it('a worker that breaks is said, and tried again on demand', async () => {
    const port = new Held();
    const { has, screen } = await drawing(port);
    await has('54 %');
    port.held = true;
    const { workspace } = shown!;
    workspace.editCanopy({ heightM: 2.6 });
    await expect.poll(() => port.tasks.at(-1)!.kind).toBe('answer');
    port.onerror?.({ message: 'out of memory' } as ErrorEvent);
    await expect.element(screen.getByRole('alert')).toHaveTextContent('failed');
    port.held = false;
    port.onTrees = 0.22;
    await screen.getByRole('button', { name: 'Try again' }).click();
    await has('22 %');
    await expect.element(screen.getByRole('alert')).not.toBeInTheDocument();
  });
});

describe('one pass', () => {
  it('drops fly, then the pass ends by itself; it can be stopped before', async () => {
    const { has, screen, spray } = await drawing();
    await has('54 %');
    const dots = () => [...screen.container.querySelectorAll('.drop')].map((p) => p.getAttribute('d')).join('');
    await screen.getByRole('button', { name: 'Play one pass slowly' }).click();
    await expect.poll(dots).not.toBe('');
    const before = dots();
    await expect.poll(dots).not.toBe(before);
    await screen.getByRole('button', { name: 'Stop' }).click();
    await expect.poll(() => screen.container.querySelectorAll('.drop').length).toBe(0);
    expect(spray.playing).toBe(false);
  });
});

describe('pictures', () => {
  it('an SVG that stands alone: every rule resolved, caption and scale in it', async () => {
    const { has, spray, screen, saved } = await drawing();
    await has('39 to 69 %');
    await screen.getByRole('button', { name: 'Save SVG' }).click();
    await expect.poll(() => saved.length).toBe(1);
    expect(saved[0]!.name).toBe('lower-bench-full-leaf-spray.svg');
    const svg = String(saved[0]!.content);
    expect(svg).not.toMatch(/var\(|calc\(|NaN|undefined/);
    const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
    expect(parsed.querySelector('parsererror')).toBeNull();
    const said = (parsed.documentElement.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ');
    expect(said).toContain('Lower bench, Full leaf: 16 of 16 nozzles spray, 8.0 bar, 6.0 km/h, 361 L/ha');
    expect(said).toContain('Model; on the trees 54 %, band 39 to 69 %.');
    expect(said).toContain('canopy top');
    expect(said).toContain('1.00 m');
    expect(sheet(spray, 'us')!.svg.replace(/[\u00a0\u202f]/g, ' ')).toContain('mph');
  });
  it('a PNG of the same, at twice its size, that is not blank', async () => {
    const { has, spray } = await drawing();
    await has('54 %');
    const { svg, width, height } = sheet(spray, 'metric')!;
    const image = await createImageBitmap(await pngOf(svg, width, height));
    expect([image.width, image.height]).toEqual([2 * width, 2 * height]);
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d')!;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    const colours = new Set<number>();
    for (let i = 0; i < data.length; i += 4 * 97) colours.add((data[i]! << 16) | (data[i + 1]! << 8) | data[i + 2]!);
    expect(colours.size).toBeGreaterThan(20);
  });
});

describe('the model itself, in its worker', () => {
  it('answers for the demo block, with a band, and again for another height', async () => {
    const { spray, workspace } = await drawing(startWorker());
    await expect.poll(() => spray.band !== null, { timeout: 20_000 }).toBe(true);
    const before = spray.answer!.balance.onTrees;
    const [least, most] = spray.band!.onTrees;
    expect(before).toBeGreaterThan(least);
    expect(before).toBeLessThan(most);
    expect(Object.values(spray.answer!.balance.shares).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 3);
    workspace.editCanopy({ heightM: 2 });
    await expect.poll(() => spray.answer!.balance.onTrees, { timeout: 10_000 }).toBeLessThan(before - 0.02);
  });
});
