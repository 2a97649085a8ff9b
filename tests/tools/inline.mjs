/**
 * Modules written into the page. On a slow network each way there and back counts: what the first screen needs comes with the page itself.
 * A script in a page can't be imported, so it hands on what its modules export through one object, and in the place of each stands a file that
 * takes it from there for what is asked for later. That is asked for once the page has started: what is set at the start is set by then.
 */
import { writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { rolldown } from 'rolldown';

const SHARED = 'rowtailorFirst';
const HANDS_ON = '\0hands-on:';
const quoted = JSON.stringify;

/** Each module in its turn, and after it what hands it on: one that waits for others lets them have those before it. */
const handsOn = (root, files) => ({
  name: 'hands-on',
  resolveId(id, importer, { kind }) {
    if (id.startsWith(HANDS_ON)) return id;
    // What is asked for later is named from where the page stands.
    if (kind === 'dynamic-import') return { id: `./${relative(root, resolve(dirname(importer), id))}`, external: true };
    return null;
  },
  load(id) {
    if (id === `${HANDS_ON}all`) return files.map((file) => `import ${quoted(HANDS_ON + file)};`).join('\n');
    if (!id.startsWith(HANDS_ON)) return null;
    const file = id.slice(HANDS_ON.length);
    return `import * as all from ${quoted(resolve(root, file))};\n(globalThis.${SHARED} ??= {})[${quoted(file)}] = all;`;
  },
  transform: (code, id) => (id.startsWith(HANDS_ON) ? null : code.replaceAll('import.meta.url', `new URL(${quoted(`./${relative(root, id)}`)},document.baseURI).href`))
});

/**
 * @param root folder of the built files
 * @param files the modules, each after what it imports; what stands in their place is written
 * @returns the text of one module script
 */
export async function inlined(root, files) {
  const bundle = await rolldown({ input: `${HANDS_ON}all`, plugins: [handsOn(root, files)] });
  const { output } = await bundle.generate({ format: 'es', minify: true, codeSplitting: false });
  await bundle.close();
  const script = output[0].code.trim().replaceAll('</script', String.raw`<\/script`);
  // In a script of a page these would be read otherwise than as they are meant.
  if (/<script|\r/i.test(script)) throw new Error('text that cannot stand in a script of a page');
  for (const file of files) writeFileSync(join(root, file), await standIn(resolve(root, file), file));
  return script;
}

/** A module that exports the same names. */
async function standIn(path, file) {
  const bundle = await rolldown({ input: path, external: () => true });
  const { output } = await bundle.generate({ format: 'es' });
  await bundle.close();
  const names = output[0].exports;
  return `const{${names.map((name, i) => `${quoted(name)}:e${i}`).join()}}=${SHARED}[${quoted(file)}];export{${names.map((name, i) => `e${i} as ${name}`).join()}};\n`;
}
