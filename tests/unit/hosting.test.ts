import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { headerRules, headersFor } from '../tools/headers.mjs';

const policy = (path: string): string => headersFor(path)['content-security-policy']!;
const permissions = headersFor('/')['permissions-policy']!;

it('every file has the headers of all, and some have more', () => {
  expect(Object.keys(headersFor('/anything'))).toEqual(['content-security-policy', 'cross-origin-opener-policy', 'cross-origin-resource-policy', 'permissions-policy', 'referrer-policy', 'x-content-type-options', 'x-frame-options']);
  expect(headersFor('/')['cache-control']).toBe('no-cache');
  expect(headersFor('/service-worker.js')['cache-control']).toBe('no-cache');
  expect(headersFor('/_app/immutable/chunks/x.js')['cache-control']).toContain('immutable');
  expect(headersFor('/icon.svg')['cache-control']).toBeUndefined();
});
it('one header of two rules is each of them: a policy is added to, never replaced', () => {
  const rules = headerRules('/*\n  A: 1\n  B: 2\n/x/*\n  A: 3\n');
  expect(headersFor('/x/y', rules)).toEqual({ a: '1, 3', b: '2' });
  expect(headersFor('/y', rules)).toEqual({ a: '1', b: '2' });
  expect(() => headerRules('nonsense')).toThrow();
});
it('nothing unsafe is allowed; workers alone may run WebAssembly, which unpacks LAZ', () => {
  expect(policy('/')).toContain("frame-ancestors 'none'");
  for (const path of ['/', '/service-worker.js', '/_app/immutable/chunks/x.js']) expect(policy(path)).not.toContain('unsafe');
  expect(policy('/_app/immutable/workers/x.js').replace("'wasm-unsafe-eval'", '')).not.toContain('unsafe');
});
it('a device is allowed where the page uses it, and nowhere else', () => {
  const source = (readdirSync('src', { recursive: true }) as string[]).filter((f) => /\.(ts|svelte)$/.test(f)).map((f) => readFileSync(`src/${f}`, 'utf8')).join('\n');
  const uses = { 'clipboard-write': /navigator\.clipboard\.write/, 'screen-wake-lock': /navigator\.wakeLock/, 'clipboard-read': /navigator\.clipboard\.read/, camera: /getUserMedia/, geolocation: /navigator\.geolocation/, fullscreen: /requestFullscreen/ };
  for (const [feature, used] of Object.entries(uses)) expect(permissions, feature).toContain(used.test(source) ? `${feature}=(self)` : `${feature}=()`);
  expect(permissions.match(/=\(self\)/g)).toHaveLength(2);
});
