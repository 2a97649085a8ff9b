/** Names that some systems keep for devices, whatever their ending. */
const DEVICES = /^(con|prn|aux|nul|com\d|lpt\d|conin|conout)$/;
/** Letters and figures of a name; a letter may take four bytes, and a file's name no more than 255. */
const LONGEST = 60;

/**
 * The name of a file, without its ending, from names that people or other programs gave: letters and figures alone, so that it is no path, no
 * option of a command, nothing hidden, and turns no direction of writing.
 */
export function fileStem(...parts: readonly string[]): string {
  const plain = parts.join('-').normalize('NFC').toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
  const stem = [...plain].slice(0, LONGEST).join('').replace(/^-|-$/g, '');
  return stem === '' || DEVICES.test(stem) ? `rowtailor${stem && '-'}${stem}` : stem;
}
