/** The built page as a static host serves it: compressed if asked for, with long-lived names kept. Run by itself, it serves at a port as it is. */
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { headersFor } from './headers.mjs';

const TYPES = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.css': 'text/css', '.svg': 'image/svg+xml', '.png': 'image/png', '.json': 'application/json', '.woff2': 'font/woff2', '.webmanifest': 'application/manifest+json', '.wasm': 'application/wasm', '.txt': 'text/plain; charset=utf-8' };
const PACKED = new Set(['.html', '.js', '.css', '.svg', '.json', '.webmanifest', '.wasm', '.txt']);

/** How hosts pack what they send: some know the older way alone. */
const PACK = { gzip: gzipSync, br: brotliCompressSync, none: (bytes) => bytes };

/** @returns where it is, how many bytes it sent since it was last asked, and how it is ended */
export async function servePacked({ port = 0, pack = 'gzip' } = {}) {
  let sent = 0;
  const done = new Map();
  // Packed once, as on a host, or the packing would be measured.
  const packedOf = (file, bytes) => done.get(file) ?? done.set(file, PACK[pack](bytes)).get(file);
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://here').pathname)).replace(/^(\.\.[/\\])+/, '');
    const file = join('build', path.endsWith('/') ? `${path}index.html` : path);
    readFile(file).then(
      (bytes) => {
        const type = extname(file);
        const packed = PACKED.has(type);
        const body = packed ? packedOf(file, bytes) : bytes;
        sent += body.length;
        response.writeHead(200, {
          'content-type': TYPES[type] ?? 'application/octet-stream',
          'content-length': body.length,
          ...headersFor(path),
          ...(packed && pack !== 'none' ? { 'content-encoding': pack } : {})
        });
        response.end(body);
      },
      () => response.writeHead(404).end()
    );
  });
  await new Promise((done) => server.listen(port, '127.0.0.1', () => done(undefined)));
  const address = server.address();
  return {
    url: `http://127.0.0.1:${typeof address === 'object' && address ? address.port : port}/`,
    sentSince() {
      const n = sent;
      sent = 0;
      return n;
    },
    close() {
      server.close();
      server.closeAllConnections();
    }
  };
}

if (argv[1] === fileURLToPath(import.meta.url)) console.log((await servePacked({ port: Number(argv[2]), pack: 'none' })).url);
