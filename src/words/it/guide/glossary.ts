import type { glossary as EN, terms as TERMS } from '../../en/guide/glossary.ts';
import type { Translated } from '../../translation.ts';

/** I simboli vengono dalle formule stesse; i termini sono quelli del mestiere e i nostri. */
export const glossary: Translated<typeof EN> = {
  title: 'Simboli e termini',
  find: 'Cercare un simbolo, una parola o un’unità',
  found: (n) => (n === 1 ? '1 trovato' : `${n} trovati`),
  none: 'Nulla di trovato. Provare con una parola più corta.',
  all: 'Mostra tutto',
  symbols: 'Simboli',
  terms: 'Termini',
  more: (n) => `e altre ${n}`,
  same: 'Un simbolo compare una volta per ciascun significato. Le formule calcolano nelle unità scritte qui, qualunque cosa mostri lo schermo.',
  close: 'Chiudi'
};

export const terms: Translated<typeof TERMS> = {
  alley: ['interfila', 'Terreno tra due filari, dove passa l’irroratrice.'],
  skirt: ['base della chioma', 'Bordo inferiore della chioma: altezza da terra della foglia più bassa.'],
  trv: ['volume del filare, TRV', 'Volume che riempirebbero le chiome di un ettaro, come un muro alto e largo quanto gli alberi.'],
  lwa: ['superficie della parete fogliare, LWA', 'Superficie delle due facce della chioma in un ettaro: altezza della parete per lunghezza dei filari, due volte.'],
  lad: ['densità di area fogliare, LAD', 'Superficie di foglia, di una faccia, in un metro cubo di chioma.'],
  bbch: ['stadio di sviluppo, BBCH', 'Due cifre che dicono a che punto è la coltura, dalla gemma dormiente alla caduta delle foglie.'],
  ladder: ['tappe della stagione', 'Stadi di un appezzamento nel loro ordine; una tappa per ciascuno, con chioma e regolazione.'],
  section: ['sezione', 'Disegno attraverso l’interfila: la macchina in mezzo, mezzo filare per lato.'],
  setting: ['regolazione', 'Ciò che si regola per un appezzamento a uno stadio: ugelli aperti, calibri, pressione, velocità, ventilatore.'],
  working: ['calcolo', 'Come è nato un numero: formula, valori, fonte e quanto è sicuro.'],
  verdict: ['su foglia, oltre cima, sotto base, chiuso', 'Dove mira la miscela di un ugello: per sola geometria, senza vento né gocce.'],
  rate: ['volume di applicazione', 'Litri di miscela su un ettaro.'],
  concentration: ['fattore di concentrazione', 'Quante volte meno acqua del volume diluito dell’etichetta.'],
  load: ['carico', 'Un pieno del serbatoio.'],
  headland: ['controllo in capezzagna', 'Prove di velocità, di rabbocco e di raccolta che dimostrano una regolazione.'],
  card: ['scheda di cabina', 'Una pagina stampata con la regolazione, per la cabina.'],
  strategies: ['tabella delle strategie', 'Modi pubblicati di adattare acqua e dose alla chioma, fianco a fianco.'],
  vmd: ['classe di dimensione delle gocce', 'Da fine a grossa, secondo le gocce che fa un ugello a una pressione.'],
  deltaT: ['delta T', 'Temperatura asciutta meno temperatura umida: quanto presto asciugano le gocce.'],
  buffer: ['fascia di rispetto', 'Fascia accanto all’acqua o ai vicini da non trattare. Quanto larga lo dicono l’etichetta e la legge locale.'],
  drift: ['deriva', 'Miscela che lascia per aria il terreno trattato.'],
  ucr: ['UCR', 'Unità di una strategia: un piccolo volume fisso di chioma lungo il filare.']
};
