/** What is run inside the page: each function stands alone there. */

declare global {
  var rowtailorTyped: (name: string, number: number) => Promise<void>;
  var rowtailorSaid: (name: string, number: number) => Promise<void>;
}

/** Lays down the store of the first version: one record of file text. */
export const layOld = (text: string): Promise<void> =>
  new Promise((done, fail) => {
    const open = indexedDB.open('rowtailor', 1);
    open.onupgradeneeded = () => void open.result.createObjectStore('open');
    open.onerror = () => fail(open.error);
    open.onsuccess = () => {
      const change = open.result.transaction('open', 'readwrite');
      change.objectStore('open').put(text, 'document');
      change.oncomplete = () => (open.result.close(), done());
      change.onerror = () => fail(change.error);
    };
  });

/** Lays down the store of the second version, which kept nothing as it came. */
export const laySecond = (text: string): Promise<void> =>
  new Promise((done, fail) => {
    const open = indexedDB.open('rowtailor', 2);
    open.onupgradeneeded = () => {
      open.result.createObjectStore('orchards', { keyPath: 'id' });
      open.result.createObjectStore('texts');
      open.result.createObjectStore('steps');
      const settings = open.result.createObjectStore('settings', { autoIncrement: true });
      settings.createIndex('rung', ['orchard', 'block', 'rung']);
      settings.createIndex('orchard', 'orchard');
    };
    open.onerror = () => fail(open.error);
    open.onsuccess = () => {
      const change = open.result.transaction(['orchards', 'texts'], 'readwrite');
      const { name } = JSON.parse(text) as { name: string };
      change.objectStore('orchards').put({ id: 'second', name, revision: 1, changedMs: Date.now(), turn: 1, length: text.length });
      change.objectStore('texts').put(text, 'second');
      change.oncomplete = () => (open.result.close(), done());
      change.onerror = () => fail(change.error);
    };
  });

/** Every kept text, read past the program's own code. */
export const keptTexts = (): Promise<{ name: string; text: string }[]> =>
  new Promise((done, fail) => {
    const open = indexedDB.open('rowtailor');
    open.onerror = () => fail(open.error);
    open.onsuccess = () => {
      const read = open.result.transaction('texts').objectStore('texts').getAll();
      read.onsuccess = () => {
        open.result.close();
        done((read.result as string[]).map((text) => ({ name: (JSON.parse(text) as { name: string }).name, text })));
      };
      read.onerror = () => fail(read.error);
    };
  });

/** Types ever higher numbers, in bursts and with pauses, and reports each that the page says is kept. First a file may be opened. */
export async function drive({ from, seed, file }: { from: number; seed: number; file: { name: string; text: string } | null }): Promise<void> {
  const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));
  let state = seed;
  const chance = () => (state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff) / 0x7fffffff;
  const water = () => document.querySelector<HTMLInputElement>('#own-water')!;
  const status = () => document.querySelector('header [role=status]')?.textContent;
  const until = async (met: () => boolean) => {
    while (!met()) await pause(4);
  };
  let name = 'Bench orchard';
  const kept = async (number: number) => {
    await pause(0);
    await pause(0);
    await until(() => status() === 'kept on this device' && Number(water().value) === number);
    await rowtailorSaid(name, number);
  };
  // The page opens the orchard that was opened last: that is waited for.
  const open = await new Promise<{ name: string; text: string } | null>((done) => {
    const request = indexedDB.open('rowtailor');
    request.onsuccess = () => {
      const stores = request.result.transaction(['orchards', 'texts']);
      const all = stores.objectStore('orchards').getAll();
      all.onsuccess = () => {
        const last = (all.result as { id: string; name: string; turn: number }[]).sort((a, b) => b.turn - a.turn)[0];
        if (!last) return done(null);
        const text = stores.objectStore('texts').get(last.id);
        text.onsuccess = () => (request.result.close(), done({ name: last.name, text: text.result as string }));
      };
    };
  });
  if (open) {
    const { ownWaterLPerHa } = (JSON.parse(open.text) as { blocks: { ownWaterLPerHa?: number }[] }).blocks[0]!;
    await until(() => water().value === String(ownWaterLPerHa ?? ''));
    name = open.name;
  }
  if (file) {
    name = file.name;
    await rowtailorTyped(name, from);
    const bag = new DataTransfer();
    bag.items.add(new File([file.text], 'orchard.json', { type: 'application/json' }));
    // The menu holds it, and is built when it is first opened.
    document.querySelector<HTMLDetailsElement>('header details.menu')!.open = true;
    const picker = () => document.querySelector<HTMLInputElement>('header input[type=file]');
    await until(() => picker() !== null);
    const input = picker()!;
    input.files = bag.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
    await kept(from);
  }
  for (let number = from + 1; number < from + 400; number++) {
    // Said before it is typed: what is found may be no higher.
    await rowtailorTyped(name, number);
    const box = water();
    box.value = String(number);
    box.dispatchEvent(new Event('input', { bubbles: true }));
    if (chance() < 0.4) await kept(number);
    else await pause(chance() * 120);
  }
}
