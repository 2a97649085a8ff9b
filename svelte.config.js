import adapter from '@sveltejs/adapter-static';

/** @type {import('@sveltejs/kit').Config} */
export default {
  kit: {
    adapter: adapter({ fallback: undefined, strict: true }),
    paths: { relative: true },
    // Files that are for the host alone: some hosts serve them to nobody, and what cannot be fetched is not kept.
    serviceWorker: { files: (path) => path !== '_headers' && path !== '.nojekyll' },
    // The first screen's rules come with the page: a dozen small files would each cost a poor network its way there and back.
    inlineStyleThreshold: 16_000,
    // Nothing leaves the page: every source is our own; Kit adds the hash of its one start script.
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['none'],
        'script-src': ['self'],
        'style-src': ['self'],
        'font-src': ['self'],
        'img-src': ['self', 'data:'],
        'connect-src': ['self'],
        'worker-src': ['self'],
        'manifest-src': ['self'],
        'base-uri': ['none'],
        'form-action': ['none'],
        'object-src': ['none'],
        // No text becomes markup or script but through these: the framework's templates, its service worker, our workers, drawings that are parsed to be saved.
        'require-trusted-types-for': ['script'],
        'trusted-types': ['svelte-trusted-html', 'sveltekit-trusted-url', 'rowtailor-worker', 'rowtailor-drawing']
      }
    },
    typescript: {
      config: (config) => {
        config.include.push('../tests/**/*.ts');
        return config;
      }
    }
  }
};
