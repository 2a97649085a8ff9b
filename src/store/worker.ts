/** What a page that trusts no text as a script asks of one who names a worker: this policy, and only files of the page itself. */
interface Trust {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): unknown };
}
const policy = (globalThis as { trustedTypes?: Trust }).trustedTypes?.createPolicy('rowtailor-worker', {
  createScriptURL(url) {
    if (new URL(url, location.href).origin !== location.origin) throw new TypeError('a worker of another origin');
    return url;
  }
});
const trusted = (file: string): string => (policy?.createScriptURL(file) ?? file) as string;

/** Starts a worker from a file of the build: `import file from './worker.ts?worker&url'`. */
export const moduleWorker = (file: string): Worker => new Worker(trusted(file), { type: 'module' });

/** The worker that keeps the page on the device. It fetches every file of the page: it is started when the page itself needs none any more. */
export function keepPage(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  navigator.serviceWorker.register(trusted('service-worker.js')).catch(() => undefined);
}
