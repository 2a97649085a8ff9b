/** Why a formula of the user's own is none, by the engine's code. */
export const OWN_REFUSALS: Readonly<Record<string, string>> = {
  'own-empty': 'La formula è vuota. Scriverne una sulla chioma, come TRVc / 10000.',
  'own-too-long': 'La formula ha {length} caratteri; se ne leggono al massimo {most}. Accorciarla.',
  'own-too-deep': 'Più di {most} termini della formula stanno l’uno dentro l’altro. Separarla, o togliere parentesi.',
  'own-character': '«{character}» alla posizione {at} non appartiene ad alcuna formula. Sono ammessi numeri con il punto decimale, + - * / ^, parentesi, nomi, e virgole tra i termini di una funzione.',
  'own-syntax': 'Alla posizione {at} manca qualcosa o c’è qualcosa di troppo. Cercarvi un segno, un termine o una parentesi.',
  'own-number': '{number} non può stare in una formula. Scrivere numeri da 0.000001 a 1 000 000 000 000, senza esponente.',
  'own-unknown-name': '{name} non è il nome di un valore della chioma. Ci sono: {known}.',
  'own-unknown-name-near': '{name} non è il nome di un valore della chioma. Si intendeva {nearest}? Ci sono: {known}.',
  'own-unknown-function': '{name} qui non è una funzione. Ci sono: {known}. Scrivere la moltiplicazione con *.',
  'own-unknown-function-near': '{name} qui non è una funzione. Si intendeva {nearest}? Ci sono: {known}. Scrivere la moltiplicazione con *.',
  'own-arguments': '{name} prende da {least} a {most} termini, ce ne sono {count}. Mettere virgole tra loro, e un punto nei decimali.',
  'own-member': 'Un punto sta tra nomi. Scrivere i decimali con cifre intorno al punto, e i nomi da soli.',
  'own-several': 'Questa non è una sola formula: manca un segno tra due termini. Scrivere la moltiplicazione con *.',
  'own-not-arithmetic': 'Questo è più che aritmetica. Sono ammessi + - * / ^, parentesi, numeri, nomi e funzioni.'
};
