import type { AssumptionWords } from '../../words.ts';

const drops = (name: string): AssumptionWords => ({
  label: `Goccia mediana, ${name}`,
  meaning: 'Metà della miscela è in gocce più piccole. Le classi confrontano ugelli; non hanno limiti in µm.'
});

/** Every constant of the spray model. */
export const SPRAY_ASSUMPTION_WORDS: Readonly<Record<string, AssumptionWords>> = {
  'spray.projection': { label: 'Foglia rivolta al getto', meaning: 'Parte dell’area fogliare che sta sul percorso, tolte le foglie una dietro l’altra. Adattata a una serie in vigneto; è ciò che sposta di più il risultato.' },
  'spray.leaf-beta': { label: 'Scorrimento intorno a una foglia', meaning: 'Più è grande, più gocce piccole seguono l’aria intorno a una foglia.' },
  'spray.leaf-size': { label: 'Dimensione della foglia', meaning: 'Larghezza di una foglia attraverso l’aria.' },
  'spray.wood-beta': { label: 'Scorrimento intorno a un rametto', meaning: 'Più è grande, più gocce piccole seguono l’aria intorno a un rametto.' },
  'spray.wood-size': { label: 'Dimensione del rametto', meaning: 'Spessore del legno che cattura le gocce.' },
  'spray.wood-density': { label: 'Legno in una pianta spoglia', meaning: 'Superficie proiettata del legno in un metro cubo di chioma.' },
  'spray.canopy-drag': { label: 'Resistenza della chioma', meaning: 'Quanto foglie e legno rallentano l’aria.' },
  'spray.entrainment': { label: 'Aria trascinata da una lama', meaning: 'Quanto in fretta l’aria da una fessura trascina aria ferma e rallenta.' },
  'spray.round-entrainment': { label: 'Aria trascinata da una bocchetta', meaning: 'Quanto in fretta l’aria da un’uscita tonda trascina aria ferma e rallenta.' },
  'spray.plume-spread': { label: 'Apertura del getto di un ugello', meaning: 'Deviazione standard della sua direzione, come parte dell’angolo intero del cono.' },
  'spray.shell-share': { label: 'Spessore del guscio di foglie', meaning: 'Parte esterna della mezza larghezza in cui le foglie sono più dense.' },
  'spray.core-ratio': { label: 'Foglie dentro la chioma', meaning: 'Densità fogliare della parte interna su quella del guscio.' },
  'spray.cross-wind': { label: 'Vento attraverso i filari', meaning: 'In cima alla chioma, da sinistra. Piega l’aria nel disegno. Il modello non mostra che cosa fa il vento al deposito.' },
  'spray.wind-decay': { label: 'Vento perso nella chioma', meaning: 'Quanto in fretta il vento cala dalla cima della chioma verso il basso.' },
  'spray.delta-t': { label: 'Delta T per gocce che si asciugano', meaning: 'Bulbo asciutto meno bulbo umido. Più è grande, più in fretta le gocce si riducono in volo. Dove è stato scritto il meteo del giorno viene da lì, salvo impostarlo qui.' },
  'spray.fine-part': { label: 'Parte fine dello spettro', meaning: 'Dimensione sotto la quale sta un decimo della miscela, sulla dimensione mediana.' },
  'spray.non-volatile': { label: 'Ciò che non evapora', meaning: 'Parte del liquido che resta quando una goccia si è asciugata, in volume.' },
  'spray.release-speed': { label: 'Velocità all’uscita dell’ugello', meaning: 'Velocità con cui le gocce lasciano l’ugello.' },
  'spray.rows': { label: 'Filari trattati per lato', meaning: 'Filari dell’appezzamento su ogni lato della macchina. Oltre l’ultimo è fuori dall’appezzamento.' },
  'spray.vmd-XF': drops('estremamente fine'),
  'spray.vmd-VF': drops('molto fine'),
  'spray.vmd-F': drops('fine'),
  'spray.vmd-M': drops('media'),
  'spray.vmd-C': drops('grossolana'),
  'spray.vmd-VC': drops('molto grossolana'),
  'spray.vmd-XC': drops('estremamente grossolana'),
  'spray.vmd-UC': drops('ultra grossolana'),
  'spray.vmd-unknown': { label: 'Goccia mediana, classe non nota', meaning: 'Per un ugello la cui tabella non stampa alcuna classe di gocce.' }
};
