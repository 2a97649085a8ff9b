import type { firstSteps as EN } from '../../en/guide/first.ts';
import type { Translated } from '../../translation.ts';

/** Ciò che può provare chi viene per la prima volta; ogni riga se ne va quando è fatta. */
export const firstSteps: Translated<typeof EN> = {
  name: 'Tre cose da provare',
  steps: {
    top: 'Trascinare la cima o scriverne l’altezza: l’acqua la segue.',
    shut: 'Chiudere un ugello che spruzza sopra gli alberi.',
    why: 'Leggere come si è calcolata l’acqua.'
  },
  done: (line) => `Fatto: ${line}`,
  away: 'Nascondi'
};
