/**
 * Stands in the page before its own script has come: the look and the language that were chosen, what the page is for, and the words of that
 * language asked for at once, which the script would else ask for only when it runs.
 */
import { PURPOSE } from '#words/purpose.ts';
import { SPOKEN } from '#words/spoken.ts';
import { lookOf, PREFERENCES_KEY, wear } from '#workspace/look.ts';

/** Files of words by language, told by the build. */
declare const __WORDS__: Readonly<Record<string, readonly string[]>>;

try {
  wear(lookOf(JSON.parse(localStorage.getItem(PREFERENCES_KEY)!)));
} catch {
  // Unreadable or forbidden storage: the page as it is.
}
document.documentElement.lang = SPOKEN;
document.querySelector('.meanwhile p:last-child')!.textContent = PURPOSE[SPOKEN];
for (const file of __WORDS__[SPOKEN] ?? []) document.head.append(Object.assign(document.createElement('link'), { rel: 'modulepreload', href: file }));
