import type { mixText as EN } from '../../en/headland/mix-text.ts';
import type { Translated } from '../../translation.ts';

/** What the Loads step says of the mix. */
export const mixText: Translated<typeof EN> = {
  areaFrom: { mix: 'come indicato per questo trattamento', block: 'dell’appezzamento', rows: 'da filari, loro lunghezza e distanza' },
  volumeFrom: { check: 'come misurato in capezzagna', setting: 'come dice la regolazione, non ancora misurato' },
  groups: {
    conditioners: 'condizionatore dell’acqua',
    'soluble-powders': 'polvere o granulo solubile',
    'dry-powders': 'polvere o granulo secco',
    'liquid-flowables': 'sospensione liquida',
    emulsifiables: 'emulsionabile',
    solutions: 'soluzione',
    adjuvants: 'coadiuvante',
    unknown: 'tipo non noto'
  },
  formulations: {
    WP: 'WP, polvere bagnabile',
    WG: 'WG, granuli idrodispersibili',
    DF: 'DF, granuli secchi dispersibili',
    SG: 'SG, granuli solubili in acqua',
    SP: 'SP, polvere solubile in acqua',
    SC: 'SC, sospensione concentrata',
    SE: 'SE, suspoemulsione',
    F: 'F, sospensione liquida',
    ME: 'ME, microemulsione',
    CS: 'CS, sospensione di capsule',
    EC: 'EC, concentrato emulsionabile',
    EW: 'EW, emulsione in acqua',
    OD: 'OD, dispersione in olio',
    SL: 'SL, concentrato solubile',
    adjuvant: 'coadiuvante',
    conditioner: 'condizionatore dell’acqua',
    other: 'altro, non in elenco'
  },
  order: {
    water: (share) => `Acqua: almeno ${share} prima del primo prodotto.`,
    agitate: 'Agitazione avviata, e lasciata avviata fino a serbatoio vuoto.',
    product: (name, group) => `${name} (${group}). Lasciarlo disperdere del tutto prima del successivo.`,
    one: (name, group) => `${name} (${group}).`,
    'fill-up': 'Completare con acqua fino a quanto richiede il carico, poi andare a irrorare: non lasciar riposare una miscela.'
  },
  labelFirst: 'L’ordine sulle etichette viene prima; cercarlo su ciascuna. Dove non dicono nulla, in questo ordine:',
  orderNotes: [
    'Ordine per tipo di prodotto: North Dakota State University, 2021. I condizionatori all’inizio, la parte di acqua e i coadiuvanti alla fine sono pratica comune.',
    'Un altro ordine in uso agita dopo i prodotti bagnabili e finisce con i tensioattivi; alcuni riempiono il serbatoio a metà prima di miscelare.',
    'Prima di una miscela mai fatta: una prova di miscibilità in un vaso con la stessa acqua, e verificare se la miscela è ammessa.'
  ],
  cautions: [
    'Maneggiare il concentrato è il passo più rischioso della giornata: dispositivi di protezione come dice ogni etichetta, acqua pulita a portata di mano, nessun altro vicino.',
    'Riempire con un tubo che non possa risucchiare. Non lasciare mai un serbatoio che si sta riempiendo.',
    'Pesare su una bilancia, misurare in una caraffa: tappi e tacche del serbatoio possono sbagliare di un decimo.'
  ],
  rinse: {
    tenfold: (water, residual) => `Risciacquare con ${water}: dieci volte ciò che resta, ${residual}.`,
    tenth: (water) => `Risciacquare con ${water}: un decimo del serbatoio, perché ciò che resta non è noto.`,
    left: (once, thrice) => `Usata in una volta lascia ${once} della concentrazione; in tre parti, ciascuna irrorata fino in fondo, ${thrice}.`,
    out: 'Irrorare l’acqua di risciacquo sulla coltura, in strato sottile e in movimento, come consentono l’etichetta e la legge locale; mai in un solo punto né in uno scarico.'
  },
  hours: (h, min) => (h === 0 ? `${min} min` : `${h} h ${min.padStart(2, '0')} min`)
};
