import type { seasonText as EN } from '../../en/season/text.ts';
import type { Translated } from '../../translation.ts';

/** What is said of a season. */
export const seasonText: Translated<typeof EN> = {
  kinds: { water: 'acqua per superficie', mix: 'miscela sull’appezzamento', loads: 'riempimenti del serbatoio', 'dose-kg': 'per superficie', 'dose-L': 'per superficie', 'product-kg': 'sull’appezzamento', 'product-L': 'sull’appezzamento' },
  ofProduct: (product, what) => `${product}, ${what}`,
  opened: (nozzles, several) => `${nozzles} ${several ? 'si aprono' : 'si apre'}.`,
  shut: (nozzles, several) => `${nozzles} ${several ? 'si chiudono' : 'si chiude'}.`,
  same: 'Nulla cambia di più di 1 %.',
  fields: { heightM: 'altezza', widthM: 'larghezza', skirtM: 'foglie più basse', ladM2PerM3: 'densità di area fogliare' },
  volume: 'volume di vegetazione (contorno)',
  by: {
    stage: (from) => `da ${from}, per fase fenologica`,
    'degree-days': (from, to) => `tra ${from} e ${to}, per gradi giorno`
  },
  limits: {
    'apple-shares': 'Foglie: 10 % della loro area in piena fioritura, 23 % alla caduta dei petali (Forshey et al. 1987, melo McIntosh); otto volte la fioritura quattro settimane dopo, posto a memoria a BBCH 73. Altre piante differiscono.',
    'volume-range': 'Contorno: il volume di vegetazione cresce dal 20 al 30 % dalla primavera all’estate, al massimo del 50 % (BBZ Arenenberg, da un riassunto).',
    'one-stage': 'Il campo comprende dal 20 al 30 % di crescita e una fase letta con uno di scarto. Non è un intervallo di confidenza.',
    alike: 'Si assume che altezza e larghezza crescano in modo uguale, come si dispiegano le foglie, e che le foglie più basse restino: ipotesi, senza fonte.',
    pruning: 'Potatura, potatura meccanica, carico di frutti e branche piegate non vi sono. Misurare il filare prima di farvi affidamento.',
    'straight-between': 'L’area fogliare segue i gradi giorno sopra la base (Litschmann et al. 2016, da un riassunto); che lo faccia anche il contorno è un’ipotesi. Su un lungo percorso le foglie non si dispiegano in modo regolare: dove i due modi differiscono, misurare.',
    'a-week': 'Il campo è la stessa data una settimana prima e una settimana dopo.',
    'density-left': 'Lì non è stata misurata la densità di area fogliare, o ne resta troppo poca da scrivere: resta il valore predefinito della fase.',
    'from-bare': 'Da una chioma spoglia non si possono calcolare foglie: resta il valore predefinito della fase.',
    'typical-year': 'Il file meteo va per mese e giorno: un anno tipico o un altro anno sta per questo.',
    bridged: 'I giorni che mancano al file meteo si colmano con i vicini.'
  },
  methods: {
    readings: 'La media dei gradi di ogni lettura sopra la base, nessuno sotto (pratica comune, senza fonte).',
    extremes: 'La media di minima e massima del giorno meno la base, nulla sotto (McMaster & Wilhelm 1997, a memoria).',
    mean: 'La media del giorno meno la base, nulla sotto (pratica comune, senza fonte).'
  },
  weather: (days, from, to, readings) => `${days === 1 ? '1 giorno' : `${days} giorni`}, da ${from} a ${to}, ${readings > 1 ? `${readings} letture al giorno` : 'una riga al giorno'}.`,
  joined: (days, years, readings) => `${days === 1 ? '1 giorno' : `${days} giorni`}, un anno composto con mesi di ${years} anni, ${readings > 1 ? `${readings} letture al giorno` : 'una riga al giorno'}. Va per mese e giorno.`,
  base: (base) => `Base ${base}.`,
  thin: (n) => (n === 1 ? '1 giorno ha troppo poche letture e conta come mancante.' : `${n} giorni hanno troppo poche letture e contano come mancanti.`),
  missing: (n) => (n === 1 ? 'Manca 1 giorno intermedio.' : `Mancano ${n} giorni intermedi.`),
  between: (from, to, sum, how) => `Da ${from} a ${to}: ${sum}${how}`,
  byMonthDay: (years) => (years === 1 ? ', per mese e giorno' : `, per mese e giorno, la media di ${years} anni`),
  bridgedDays: (n) => (n === 1 ? '; 1 giorno mancante colmato' : `; ${n} giorni mancanti colmati`),
  stop: (rung, finding) => `${rung}: ${finding}`,
  way: (share) => `${share} del percorso`,
  reached: (rung, date) => `${rung} secondo le foglie: circa ${date}`,
  treatmentsAssumed: 'Dove non ne è stato inserito alcuno si assume un trattamento.',
  fixedAbove: (rung, product, fixed) => `In ${rung} la regolazione unica distribuirebbe ${fixed} di ${product}, più di quanto la sua etichetta dà per quella chioma: serve per confronto, non per irrorare.`,
  usesPassed: (product, uses, most) => `${product}: sono previsti ${uses} trattamenti; la sua etichetta ne consente ${most} in una stagione. Prevederne meno.`,
  fixedIs: (rung) => `Una sola regolazione per tutta la stagione: quella di ${rung}.`,
  adaptedIs: 'Adattata: la regolazione propria di ogni tappa, il prodotto come consente la sua etichetta.',
  label: 'I risparmi sono di questi piani, non delle fatture. Prevale l’etichetta: adattare abbassa l’acqua; il prodotto la segue solo fin dove consentono l’etichetta e la legge locale.'
};
