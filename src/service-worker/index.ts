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

/** All or nothing: a version that is not whole is not installed, and the one before it goes on serving. */
worker.addEventListener('install', (event) => {
  const whole = [...PAGES, ...build, ...files].map((path) => new Request(path, { cache: 'reload' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(whole)));
});

/**
 * A new version waits, as workers do unless told otherwise, until no window of the old one is open: a page never meets parts of
 * another version, and nobody's work is interrupted by a reload. Only then are older caches of ours dropped.
 */
worker.addEventListener('activate', (event) => {
  const old = async () => {
    for (const name of await caches.keys()) if (name.startsWith(OURS) && name !== CACHE) await caches.delete(name);
    await worker.clients.claim();
  };
  event.waitUntil(old());
});

/** The kept file, else the network. Other origins and anything but reading are left alone. */
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== worker.location.origin) return;
  event.respondWith(
    (async () => {
      const cache = await caches.open(CACHE);
      const kept = await cache.match(request, { ignoreSearch: request.mode === 'navigate' });
      return kept ?? fetch(request);
    })()
  );
});
