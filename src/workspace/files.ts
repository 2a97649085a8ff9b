/** Hands a text, or what was drawn, to the user as a file: the views have no ports of their own. */
export { download as saveFile } from '#store/files.ts';
