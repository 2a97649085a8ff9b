/** `npm start`: builds the page and serves it on this machine. */
import { spawnSync } from 'node:child_process';
import { preview } from 'vite';

const built = spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'], { stdio: 'inherit' });
if (built.status !== 0) process.exit(built.status ?? 1);
const server = await preview({ logLevel: 'warn', preview: { port: Number(process.env.PORT ?? 4173), host: '127.0.0.1' } });
console.log(`Rowtailor stands open at ${server.resolvedUrls?.local[0] ?? 'the address above'}\nStop it with Ctrl+C.`);
