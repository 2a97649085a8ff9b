import adapter from '@sveltejs/adapter-static';
import { shell } from './tests/tools/shell.mjs';

/** Nothing leaves the page: every source is our own. */
const POLICY = {
  'default-src': ["'none'"],
  'script-src': ["'self'"],
  'style-src': ["'self'"],
  'font-src': ["'self'"],
  'img-src': ["'self'", 'data:'],
  'connect-src': ["'self'"],
  'worker-src': ["'self'"],
  'manifest-src': ["'self'"],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
  'object-src': ["'none'"],
  // No text becomes markup or script but through these: the framework's templates, our workers, drawings that are parsed to be saved.
  'require-trusted-types-for': ["'script'"],
  'trusted-types': ['svelte-trusted-html', 'rowtailor-worker', 'rowtailor-drawing']
};

/** @type {import('@sveltejs/kit').Config} */
export default {
  kit: {
    adapter: shell(adapter({ fallback: undefined, strict: true }), 'src/app.html', POLICY),
    paths: { relative: true },
    // It waits until the page is whole: see `store/worker.ts`. Files that are for the host alone: some hosts serve them to nobody, and what cannot be fetched is not kept.
    serviceWorker: { register: false, files: (path) => path !== '_headers' && path !== '.nojekyll' },
    typescript: {
      config: (config) => {
        config.include.push('../tests/**/*.ts');
        return config;
      }
    }
  }
};
