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

/** Starts a worker from a file of the build: `import file from './worker.ts?worker&url'`. */
export const moduleWorker = (file: string): Worker => new Worker((policy?.createScriptURL(file) ?? file) as string, { type: 'module' });
