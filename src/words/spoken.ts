/** Every language, as it calls itself. */
export const LANGUAGES = { en: 'English', de: 'Deutsch', es: 'Español', fr: 'Français', it: 'Italiano', pt: 'Português' } as const;
export type LanguageCode = keyof typeof LANGUAGES;

const KEY = 'rowtailor-language';
const isLanguage = (code: unknown): code is LanguageCode => typeof code === 'string' && Object.hasOwn(LANGUAGES, code);

/** The language that was chosen on this device, else the first of the browser's that is there. */
export function chosenLanguage(): LanguageCode {
  try {
    const kept = localStorage.getItem(KEY);
    if (isLanguage(kept)) return kept;
  } catch {
    // Forbidden storage, or none: the browser's language serves.
  }
  const wanted = typeof navigator === 'undefined' ? [] : (navigator.languages ?? []);
  return wanted.map((tag) => tag.split('-')[0]!.toLowerCase()).find(isLanguage) ?? 'en';
}

/** Says whether the choice will be found again. */
export function keepLanguage(code: LanguageCode): boolean {
  try {
    localStorage.setItem(KEY, code);
    return true;
  } catch {
    return false;
  }
}

/** What is spoken on this page, for as long as it lives. */
export const SPOKEN = chosenLanguage();
