import { expect, it } from 'vitest';
import { keepPlace, keptPlace } from '#workspace/place.ts';

const memory = (start: string | null = null) => {
  let text = start;
  return { getItem: () => text, setItem: (_: string, value: string) => void (text = value) };
};

it('what was kept comes back', () => {
  const storage = memory();
  keepPlace(storage, { block: 'b', rung: 'r', ghost: null });
  expect(keptPlace(storage)).toEqual({ block: 'b', rung: 'r', ghost: null });
});

it('nothing, text that is no JSON, and JSON that is no place are none', () => {
  for (const text of [null, '', '{', '7', 'null', '[]', '{"block":1,"rung":"r","ghost":null}', '{"block":"b","rung":"r"}']) expect(keptPlace(memory(text))).toBeNull();
  expect(keptPlace(null)).toBeNull();
});

it('a storage that forbids is no error', () => {
  const forbids = {
    getItem: () => { throw new Error('forbidden'); },
    setItem: () => { throw new Error('forbidden'); }
  };
  expect(() => keepPlace(forbids, { block: 'b', rung: 'r', ghost: null })).not.toThrow();
  expect(keptPlace(forbids)).toBeNull();
});
