import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { headersFor } from '../tools/headers.mjs';

const BUILD = fileURLToPath(new URL('../../build', import.meta.url));
const TYPES: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.svg': 'image/svg+xml', '.png': 'image/png', '.json': 'application/json', '.woff2': 'font/woff2', '.webmanifest': 'application/manifest+json' };

/** The built page as any plain host would serve it, at its root or under a path, with a service worker that can be changed as by an update. */
export async function serveBuild(under = '/'): Promise<{ readonly url: string; change(edit: (worker: string) => string): void; close(): Promise<void> }> {
  let edit = (worker: string) => worker;
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://here').pathname)).replace(/^(\.\.[/\\])+/, '');
    if (!path.startsWith(under)) return void response.writeHead(404).end();
    const file = `/${path.slice(under.length)}${path.endsWith('/') ? 'index.html' : ''}`;
    readFile(join(BUILD, file)).then(
      (bytes) => {
        response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream', ...headersFor(`/${path.slice(under.length)}`) });
        response.end(file === '/service-worker.js' ? edit(bytes.toString('utf8')) : bytes);
      },
      () => response.writeHead(404).end()
    );
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}${under}`,
    change: (to) => (edit = to),
    close: () => new Promise((done) => { server.close(() => done()); server.closeAllConnections(); })
  };
}
