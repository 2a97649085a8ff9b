import '../app.css';
import { mount } from 'svelte';
import Page from './+page.svelte';

mount(Page, { target: document.getElementById('app')! });

/** What the framework's own script calls where pages are served as they are written: by then the page stands. */
export const start = (): void => undefined;
