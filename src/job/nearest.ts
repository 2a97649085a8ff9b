export { nearest } from '#core/working/nearest.ts';
