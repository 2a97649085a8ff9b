import { language } from './language.ts';

/** "a", "a and b", "a, b and c". */
export const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} ${language().and} ${words.at(-1)}`;

/** Three or more neighbours are said as a range. */
const RUN = 3;

/** Nozzle positions in words: "L7 and R7", "L1–L3 and R1–R3"; names that do not end in a number stand as they are. */
export function nozzleNames(ids: readonly string[]): string {
  const words: string[] = [];
  for (let i = 0; i < ids.length; ) {
    let end = i + 1;
    while (end < ids.length && follows(ids[end - 1]!, ids[end]!)) end++;
    if (end - i >= RUN) words.push(`${ids[i]}–${ids[end - 1]}`);
    else words.push(...ids.slice(i, end));
    i = end;
  }
  return list(words);
}

function follows(a: string, b: string): boolean {
  const [x, y] = [/^(.*?)(\d{1,6})$/.exec(a), /^(.*?)(\d{1,6})$/.exec(b)];
  return x !== null && y !== null && x[1] === y[1] && Number(y[2]) === Number(x[2]) + 1;
}
