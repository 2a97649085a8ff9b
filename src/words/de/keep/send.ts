import type { sendWords as EN } from '../../en/keep/send.ts';
import type { Translated } from '../../translation.ts';

/** Ein Betrieb als Datei, über das Teilen-Menü oder als Link; und einer, der mit einem Link kommt. */
export const sendWords: Translated<typeof EN> = {
  title: (name) => `${name} senden`,
  file: 'Als Datei',
  fileNote: 'Alles, mit Aufzeichnungen. Wer sie öffnet, bekommt einen eigenen Betrieb.',
  share: 'Datei teilen',
  save: 'Datei speichern',
  shareFailed: 'Das Teilen-Menü konnte nicht geöffnet werden: stattdessen die Datei speichern.',
  link: 'Als Link',
  linkNote: 'Der Link enthält den Betrieb selbst, hinter dem Zeichen #: Kein Server bekommt ihn zu sehen. Wer den Link hat, kann ihn lesen, und ein Link lässt sich nicht zurückrufen.',
  records: (n) => (n === 1 ? 'mit der Aufzeichnung und den Namen darin' : `mit den ${n} Aufzeichnungen und den Namen darin`),
  copy: 'Link kopieren',
  copied: 'Kopiert.',
  copyByHand: 'Den markierten Text von Hand kopieren.',
  linkName: 'Link',
  characters: (n) => `${n} Zeichen. Manche Mailprogramme kürzen Links über 2 000; dann die Datei senden.`,
  close: 'Schließen',
  faults: {
    'other-version': 'Dieser Link wurde mit einer anderen Version dieses Programms gemacht und kann hier nicht gelesen werden. Die Seite für eine neuere Version neu laden, oder um eine Datei bitten.',
    'too-long': 'Dieser Betrieb ist für einen Link zu groß: als Datei senden.',
    damaged: 'Dieser Link ist beschädigt, wahrscheinlich unterwegs gekürzt. Noch einmal darum bitten, oder um eine Datei.',
    'unfolds-too-far': 'Dieser Link entfaltet sich zu mehr, als ein Betrieb enthalten kann, und wurde nicht weiter gelesen.',
    'no-means': 'Dieser Browser hat keine Mittel, solche Links zu lesen oder zu machen: eine Datei verwenden.'
  },
  tooLongToRead: 'Dieser Link ist länger als jeder, den dieses Programm macht, und wurde nicht gelesen.',
  offer: 'Ein Betrieb aus einem Link',
  offerNote: 'Er öffnet sich als eigener Betrieb. Nichts, was hier gespeichert ist, wird ersetzt.',
  holds: (blocks, machines, records) => `Anlagen: ${blocks}. Geräte: ${machines}. Aufzeichnungen: ${records}.`,
  more: (n) => `und ${n} weitere`,
  take: 'Öffnen',
  leave: 'Lassen',
  refused: 'Der Link wurde nicht geöffnet; was offen war, bleibt.'
};
