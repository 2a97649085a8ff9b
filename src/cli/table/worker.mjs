// A worker thread does not inherit the loader that reads TypeScript: it is set up here, then the worker proper is loaded.
import { register } from 'tsx/esm/api';

register();
await import('./worker.ts');
