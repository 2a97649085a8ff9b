import type { keepBar as EN } from '../../en/keep/bar.ts';
import type { Translated } from '../../translation.ts';

/** How the open document is kept, and what stands in the way. */
export const keepBar: Translated<typeof EN> = {
  status: {
    fresh: '',
    saving: '',
    kept: 'conservato su questo dispositivo',
    full: 'Su questo dispositivo non c’è più spazio: salvare il documento come file.',
    blocked: 'Impossibile conservare il documento su questo dispositivo: salvarlo come file.',
    failed: 'Impossibile conservare il documento su questo dispositivo: salvarlo come file.',
    newer: 'Un’altra pagina ha salvato questo frutteto.',
    gone: 'Questo frutteto non è più conservato su questo dispositivo.'
  },
  full: 'Le ultime modifiche stanno solo su questa pagina. Salvarle come file, o fare spazio eliminando frutteti definitivamente; si riprova da sé.',
  blocked: 'Questo browser non lascia conservare dati ad alcuna pagina, come in una finestra privata o per un’impostazione. Il lavoro sta solo su questa pagina e va perso quando si chiude.',
  failed: 'Le ultime modifiche stanno solo su questa pagina. Si riprova da sé.',
  newer: (at) => `È conservato un salvataggio più recente (${at}). Nulla è stato sovrascritto.`,
  newerUnkept: 'Ciò che è stato cambiato qui da allora sta solo su questa pagina.',
  takeNewer: 'Prendi il più recente',
  dropMine: 'Prendi il più recente, scarta il mio',
  keepCopy: 'Tieni il mio come copia',
  gone: 'È stato eliminato su un’altra pagina, o i dati di questo sito sono stati cancellati, mentre era aperto qui. Il lavoro sta solo su questa pagina.',
  keepAnew: 'Conserva di nuovo',
  saveFile: 'Salva come file',
  orchards: 'Frutteti salvati qui',
  clock: (span) => `L’orologio di questo dispositivo è indietro di ${span} rispetto all’ultimo salvataggio. Gli orari di salvataggi e registrazioni possono essere fuori ordine; nulla è perso. Un cronometro che era in corso è sbagliato: ripetere la prova.`,
  rescued: (names) => `Il lavoro non conservato alla chiusura di una pagina è in un frutteto a parte: ${names}.`,
  version: 'C’è una nuova versione di questa pagina. Si carica quando si ricarica.',
  reload: 'Ricarica',
  close: 'Chiudi',
  later: 'Più tardi',
  fault: 'Qualcosa in questa pagina non ha funzionato.',
  faultKept: 'Il lavoro è ancora qui, ed è conservato su questo dispositivo.',
  faultUnkept: 'Il lavoro è ancora qui, ma le ultime modifiche non sono conservate su questo dispositivo: salvarlo come file prima di ricaricare.',
  faultMore: (n) => (n === 1 ? 'Un altro dopo di esso.' : `Altri ${n} dopo di esso.`),
  faultDetails: 'Che cosa dice il browser',
  faultNote: 'Nulla è stato inviato. Copiare questo testo se lo si vuole segnalare.',
  goOn: 'Continua',
  broken: 'Questa parte della pagina non si può disegnare.',
  stepBack: 'Annulla l’ultima modifica',
  drawAgain: 'Disegna di nuovo'
};
