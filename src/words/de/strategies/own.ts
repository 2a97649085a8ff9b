/** Warum eine eigene Formel keine ist, nach der Kennung der Rechnung. */
export const OWN_REFUSALS: Readonly<Record<string, string>> = {
  'own-empty': 'Die Formel ist leer. Eine über die Krone schreiben, etwa TRVc / 10000.',
  'own-too-long': 'Die Formel hat {length} Zeichen; gelesen werden höchstens {most}. Kürzen.',
  'own-too-deep': 'Mehr als {most} Glieder der Formel stehen ineinander. Aufteilen, oder Klammern weglassen.',
  'own-character': '{character} an Stelle {at} gehört zu keiner Formel. Zulässig sind Zahlen mit Dezimalpunkt, + - * / ^, Klammern, Namen und Kommas zwischen den Gliedern einer Funktion.',
  'own-syntax': 'An Stelle {at} fehlt etwas oder ist etwas zu viel. Dort nach einem Zeichen, einem Glied oder einer Klammer suchen.',
  'own-number': '{number} kann nicht in einer Formel stehen. Zahlen von 0.000001 bis 1 000 000 000 000 schreiben, ohne Exponent.',
  'own-unknown-name': '{name} ist kein Name einer Kennzahl der Krone. Es gibt: {known}.',
  'own-unknown-name-near': '{name} ist kein Name einer Kennzahl der Krone. War {nearest} gemeint? Es gibt: {known}.',
  'own-unknown-function': '{name} ist hier keine Funktion. Es gibt: {known}. Eine Multiplikation mit * schreiben.',
  'own-unknown-function-near': '{name} ist hier keine Funktion. War {nearest} gemeint? Es gibt: {known}. Eine Multiplikation mit * schreiben.',
  'own-arguments': '{name} nimmt {least} bis {most} Glieder, es stehen {count} da. Kommas dazwischen setzen, und einen Punkt in Dezimalzahlen.',
  'own-member': 'Zwischen Namen steht ein Punkt. Dezimalzahlen mit Ziffern um den Punkt schreiben, und Namen allein.',
  'own-several': 'Das ist nicht eine Formel: Zwischen zwei Gliedern fehlt ein Zeichen. Eine Multiplikation mit * schreiben.',
  'own-not-arithmetic': 'Das ist mehr als Rechnen. Zulässig sind + - * / ^, Klammern, Zahlen, Namen und Funktionen.'
};
