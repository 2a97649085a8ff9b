import type { earlierWords as EN } from '../../en/keep/earlier.ts';
import type { Translated } from '../../translation.ts';

/** Settings that were saved for a rung before. */
export const earlierWords: Translated<typeof EN> = {
  title: 'Regulações guardadas antes',
  line: (n) => String(n),
  at: (moment) => `guardada em ${moment}`,
  back: 'Voltar a ela',
  backTo: (moment) => `Voltar à regulação de ${moment}`,
  same: 'regulada agora',
  unordered: 'O relógio deste dispositivo foi atrasado entre algumas destas: a ordem está certa, as horas podem não estar.',
  nozzlesShut: (n) => (n === 0 ? 'todos os bicos abertos' : `${n} ${n === 1 ? 'bico fechado' : 'bicos fechados'}`)
};
