import type { firstSteps as EN } from '../../en/guide/first.ts';
import type { Translated } from '../../translation.ts';

/** Was beim ersten Besuch an der Beispielanlage zu versuchen ist; jede Zeile geht, wenn es getan ist. */
export const firstSteps: Translated<typeof EN> = {
  name: 'Drei Dinge zum Ausprobieren',
  steps: {
    top: 'Die Kronenspitze ziehen oder eintippen: das Wasser folgt.',
    shut: 'Eine Düse schließen, die über die Bäume spritzt.',
    why: 'Nachlesen, wie das Wasser berechnet ist.'
  },
  done: (line) => `Erledigt: ${line}`,
  away: 'Ausblenden'
};
