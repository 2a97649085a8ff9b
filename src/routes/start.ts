import '../app.css';
import { mount } from 'svelte';
import Page from './+page.svelte';
import { soon } from './soon.ts';

soon(() => {
  const target = document.getElementById('app')!;
  // What stood there meanwhile goes in the same picture.
  target.replaceChildren();
  mount(Page, { target });
});

/** What the framework's own script calls where pages are served as they are written: by then the page stands. */
export const start = (): void => undefined;
