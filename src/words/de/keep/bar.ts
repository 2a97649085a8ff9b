import type { keepBar as EN } from '../../en/keep/bar.ts';
import type { Translated } from '../../translation.ts';

/** Wie das offene Dokument gespeichert wird, und was dem im Weg steht. */
export const keepBar: Translated<typeof EN> = {
  status: {
    fresh: '',
    saving: '',
    kept: 'auf diesem Gerät gespeichert',
    full: 'Auf diesem Gerät ist kein Platz mehr: das Dokument als Datei speichern.',
    blocked: 'Das Dokument konnte auf diesem Gerät nicht gespeichert werden: als Datei speichern.',
    failed: 'Das Dokument konnte auf diesem Gerät nicht gespeichert werden: als Datei speichern.',
    newer: 'Eine andere Seite hat diesen Betrieb gespeichert.',
    gone: 'Dieser Betrieb ist auf diesem Gerät nicht mehr gespeichert.'
  },
  full: 'Die letzten Änderungen stehen nur auf dieser Seite. Als Datei speichern, oder Platz schaffen und Betriebe endgültig löschen; es wird von selbst wieder versucht.',
  blocked: 'Dieser Browser lässt keine Seite Daten speichern, wie in einem privaten Fenster oder durch eine Einstellung. Die Arbeit steht nur auf dieser Seite und ist weg, wenn sie geschlossen wird.',
  failed: 'Die letzten Änderungen stehen nur auf dieser Seite. Es wird von selbst wieder versucht.',
  newer: (at) => `Ein neuerer Stand vom ${at} ist gespeichert. Nichts wurde überschrieben.`,
  newerUnkept: 'Was hier seither geändert wurde, steht nur auf dieser Seite.',
  takeNewer: 'Den neueren nehmen',
  dropMine: 'Den neueren nehmen, den eigenen verwerfen',
  keepCopy: 'Den eigenen als Kopie behalten',
  gone: 'Er wurde auf einer anderen Seite gelöscht, oder die Daten dieser Website wurden gelöscht, während er hier offen war. Die Arbeit steht nur auf dieser Seite.',
  keepAnew: 'Wieder speichern',
  saveFile: 'Als Datei speichern',
  orchards: 'Hier gespeicherte Betriebe',
  clock: (span) => `Die Uhr dieses Geräts steht ${span} hinter dem letzten Speichern. Zeiten von Ständen und Aufzeichnungen können ungeordnet sein; verloren ist nichts. Eine Stoppuhr, die dabei lief, ist falsch: die Fahrt noch einmal stoppen.`,
  rescued: (names) => `Arbeit, die beim Schließen einer Seite nicht gespeichert war, liegt in einem eigenen Betrieb: ${names}.`,
  version: 'Eine neue Version dieser Seite ist da. Sie wird beim Neuladen geladen.',
  reload: 'Neu laden',
  close: 'Schließen',
  later: 'Später',
  fault: 'Auf dieser Seite ging etwas schief.',
  faultKept: 'Die Arbeit ist noch hier und auf diesem Gerät gespeichert.',
  faultUnkept: 'Die Arbeit ist noch hier, aber die letzten Änderungen sind nicht auf diesem Gerät gespeichert: vor dem Neuladen als Datei speichern.',
  faultMore: (n) => `${n} ${n === 1 ? 'weiterer' : 'weitere'} danach.`,
  faultDetails: 'Was der Browser sagt',
  faultNote: 'Nichts wurde irgendwohin gesendet. Diesen Text kopieren, um den Fehler zu melden.',
  goOn: 'Weitermachen',
  broken: 'Dieser Teil der Seite lässt sich nicht zeichnen.',
  stepBack: 'Letzte Änderung rückgängig',
  drawAgain: 'Noch einmal zeichnen'
};
