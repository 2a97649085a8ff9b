import type { earlierWords as EN } from '../../en/keep/earlier.ts';
import type { Translated } from '../../translation.ts';

/** Settings that were saved for a rung before. */
export const earlierWords: Translated<typeof EN> = {
  title: 'Ajustes guardados antes',
  line: (n) => String(n),
  at: (moment) => `guardado ${moment}`,
  back: 'Volver a él',
  backTo: (moment) => `Volver al ajuste de ${moment}`,
  same: 'es el actual',
  unordered: 'El reloj de este dispositivo se atrasó entre algunos de estos: el orden es correcto, las horas pueden no serlo.',
  nozzlesShut: (n) => (n === 0 ? 'todas las boquillas abiertas' : `${n} ${n === 1 ? 'boquilla cerrada' : 'boquillas cerradas'}`)
};
