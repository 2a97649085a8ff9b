/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
import { build, files, prerendered, version } from '$service-worker';

/**
 * Keeps the whole page on the device, so that it opens with no signal. It holds the page's own files and nothing else: what the
 * user types lives in the document's own store, which no change of version touches.
 */
const worker = globalThis as unknown as ServiceWorkerGlobalScope;
const OURS = 'rowtailor-page-';
const CACHE = `${OURS}${version}`;
const PAGES = prerendered.length > 0 ? prerendered : ['./'];

/** Caches of ours, the newest last: a version is the time of its build. */
const ours = async () => (await caches.keys()).filter((name) => name.startsWith(OURS)).sort();

/** All or nothing: a version that is not whole is not installed, and the one before it goes on serving. */
worker.addEventListener('install', (event) => {
  const whole = [...PAGES, ...build, ...files].map((path) => new Request(path, { cache: 'reload' }));
  event.waitUntil(
    (async () => {
      await (await caches.open(CACHE)).addAll(whole);
      await worker.skipWaiting();
    })()
  );
});

/**
 * A new version serves from the next load on. Nothing is loaded anew by itself, so nothing that is being typed is lost; and the
 * files of the version before are kept, since a page that is open may still ask for one of its own.
 */
worker.addEventListener('activate', (event) => {
  const old = async () => {
    const before = (await ours()).filter((name) => name !== CACHE);
    for (const name of before.slice(0, -1)) await caches.delete(name);
    await worker.clients.claim();
  };
  event.waitUntil(old());
});

/** The kept file, else the network. Names of modules carry what is in them, so an older file is never taken for a newer one. */
async function answer(request: Request): Promise<Response> {
  const kept = await (await caches.open(CACHE)).match(request, { ignoreSearch: request.mode === 'navigate' });
  if (kept) return kept;
  for (const name of request.mode === 'navigate' ? [] : await ours()) {
    const older = await (await caches.open(name)).match(request);
    if (older) return older;
  }
  return fetch(request);
}

/** Other origins and anything but reading are left alone. */
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'GET' && new URL(request.url).origin === worker.location.origin) event.respondWith(answer(request));
});
