import adapter from '@sveltejs/adapter-static';

/** @type {import('@sveltejs/kit').Config} */
export default {
  kit: {
    adapter: adapter({ fallback: undefined, strict: true }),
    paths: { relative: true },
    // Nothing leaves the page: every source is our own; Kit adds the hash of its one start script.
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['none'],
        'script-src': ['self'],
        'style-src': ['self'],
        // Kit's announcer of page changes carries one style attribute of its own: this is its hash.
        'style-src-attr': ['unsafe-hashes', 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='],
        'font-src': ['self'],
        'img-src': ['self', 'data:'],
        'connect-src': ['self'],
        'worker-src': ['self'],
        'manifest-src': ['self'],
        'base-uri': ['none'],
        'form-action': ['none'],
        'object-src': ['none']
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
