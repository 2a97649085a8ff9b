import type { Part } from '../../language.ts';

/** What is said of a fitting of nozzles. */
export const FITTING: Part = {
  findings: {
    'fitting-position-off': '{nozzles} {nozzles#è|sono} a più di {tolerance} dall’obiettivo; il più lontano è {worst}, di {off}. In capezzagna misurare prima {nozzles#questo|questi}.',
    'fitting-other-speed': 'A {present} nessuna pressione porta queste misure all’obiettivo: andare a {speed}. L’aria per metro di filare cambia con la velocità.',
    'fitting-nothing-wanted': '{nozzles} {nozzles#prende|prendono} {share} della portata dove non è voluto nulla. {nozzles#Chiuderlo|Chiuderli} prima, poi cercare di nuovo.',
    'fitting-rule-upper-large': 'Per piante grandi una regola pubblicata vuole dal 65 all’80 % nella metà superiore degli ugelli aperti; qui è {share}. Sono stati seguiti i pesi, non la regola.',
    'fitting-rule-upper-low-machine': 'Per macchine basse in piante da 6 a 7,6 m una regola pubblicata vuole circa il 70 % dalle posizioni superiori; qui è {share}. Sono stati seguiti i pesi, non la regola.',
    'fitting-rule-two-thirds': 'Una regola a memoria vuole due terzi nella metà superiore degli ugelli aperti; qui è {share}. Sono stati seguiti i pesi, non la regola.',
    'fitting-rule-middle-heavy': 'Per gli agrumi una regola pubblicata vuole gli ugelli più grandi al centro dell’arco; qui non lo sono. Sono stati seguiti i pesi, non la regola.',
    'fitting-rule-proportional': 'Per torri accanto a una parete di foglie una regola a memoria attende dal 50 al 60 % nella metà superiore degli ugelli aperti; qui è {share}. Sono stati seguiti i pesi, non la regola.',
    'fitting-sides-unlike': 'Gli ugelli attuali differiscono tra sinistra e destra, quindi non sono nell’elenco. Togliere «sinistra e destra uguali» per tenerli.',
    'fitting-present-unfit': 'Gli ugelli attuali non possono raggiungere l’obiettivo: a {speed} servirebbero {pressure}, e nessun’altra velocità ammessa aiuta.'
  },
  refusals: {
    'no-own-weight': 'Nessuna posizione aperta ha un peso. Dare ad almeno una un peso maggiore di zero.',
    'no-leaf-before-nozzles': 'Nessun ugello aperto raggiunge le foglie, quindi la chioma non dà pesi. Aprire quelli davanti alle foglie, o pesare da sé le posizioni.',
    'nothing-wanted-here': 'Da {position} non è voluto nulla.',
    'fitting-speed-apart': 'Le velocità volute e quelle della macchina non hanno nulla in comune: almeno {least}, al massimo {most}. Allargare la richiesta.',
    'fitting-pressure-apart': 'Le pressioni volute e quelle della macchina non hanno nulla in comune: almeno {least}, al massimo {most}. Allargare la richiesta.',
    'fitting-no-size': 'Una posizione non ha misure tra cui scegliere. Aggiungere misure che si possono montare.',
    'fitting-class-unknown': 'La tabella «{table}» non stampa classi di gocce, quindi non se ne può rispettare la richiesta. Inserirle dalla scheda dell’ugello, o togliere la richiesta.',
    'fitting-class-unmet': 'Nessuna misura dà le classi di gocce volute a una pressione ammessa. Allargare le classi, le pressioni o le misure.',
    'fitting-pressure-tables': 'È ammesso da {least} a {most}, ma le tabelle degli ugelli vanno da {tableLeast} a {tableMost}. Allargare le pressioni o scegliere un’altra tabella.',
    'fitting-too-little': 'Le misure più grandi alla pressione più alta e alla velocità più bassa danno {most}; è voluto {target}. Aggiungere misure più grandi, ammettere più pressione o una velocità più bassa, o volere di meno.',
    'fitting-too-much': 'Le misure più piccole alla pressione più bassa e alla velocità più alta danno ancora {least}; è voluto {target}. Aggiungere misure più piccole, ammettere meno pressione o una velocità più alta, chiudere ugelli, o volere di più.',
    'fitting-changes-bind': 'Con non più di {changes} ugelli cambiati nulla raggiunge l’obiettivo. Ammettere più cambi, o allargare pressione o velocità.',
    'fitting-none': 'Nessuna combinazione di queste misure raggiunge l’obiettivo entro i limiti. Aggiungere misure, o allargare pressione o velocità.',
    'fitting-cancelled': 'La ricerca è stata fermata.'
  },
  fields: { 'fitting.targetLPerHa': 'volume da raggiungere' },
  formulas: {
    'target-flow': 'Obiettivo di una posizione',
    'off-target': 'Distanza dall’obiettivo',
    'profile-match': 'Accordo del profilo',
    'top-share': 'Parte nella metà superiore'
  },
  symbols: {
    qw: 'portata voluta qui',
    'target-flow.w': 'peso della posizione',
    'target-flow.Q': 'portata voluta',
    'off-target.d': 'scarto dall’obiettivo',
    'profile-match.M': 'accordo del profilo',
    'profile-match.e': 'somma delle differenze tra parti e pesi',
    St: 'parte nella metà superiore',
    qt: 'portata nella metà superiore'
  },
  assumptions: {
    'fitting.position-tolerance': { label: 'Posizione lontana dall’obiettivo', meaning: 'Un ugello più lontano di così dal suo obiettivo viene indicato. In uso quando si scelgono misure da un catalogo.' },
    'fitting.few-gain': { label: 'Guadagno con pochi cambi', meaning: '«Pochi cambi» è la serie con meno cambi che porta questa parte di quanto guadagna il migliore accordo.' }
  }
};
