import type { REASON_EFFECTS as EN_EFFECTS } from '../../en/strategies/reasons.ts';
import type { Translated } from '../../translation.ts';
import type { Template } from '../../words.ts';

/**
 * Why two dose indices differ, by the engine's code: `one` where one strategy counts what is substituted and the other does not, `both` where they count
 * it differently. `{one}` counts, `{other}` does not; `{from}` and `{to}` are what is substituted.
 */
export const REASON_TEMPLATES: Readonly<Record<string, { readonly one: Template; readonly both: Template }>> = {
  reference: {
    one: 'Sobre la copa de referencia de {trv}, «{a}» da el {shareA} de la dosis, «{b}» el {shareB}',
    both: 'Sobre la copa de referencia de {trv}, «{a}» da el {shareA} de la dosis, «{b}» el {shareB}'
  },
  law: { one: '«{one}» es una recta que conserva el {least} de la dosis donde no hay nada; frente a una en proporción eso hace', both: '«{a}» y «{b}» son rectas que conservan partes distintas de la dosis donde no hay nada' },
  spacing: { one: '«{one}» cuenta la distancia entre filas, aquí {to} y en la referencia {from}; «{other}» no', both: '«{a}» y «{b}» cuentan de distinto modo la distancia entre filas, aquí {to} y en la referencia {from}' },
  height: { one: '«{one}» cuenta la altura de copa, aquí {to} y en la referencia {from}; «{other}» no', both: '«{a}» y «{b}» cuentan de distinto modo la altura de copa, aquí {to} y en la referencia {from}' },
  skirt: { one: '«{one}» toma la altura desde el suelo, «{other}» no cuenta los {to} bajo la falda', both: '«{a}» y «{b}» cuentan de distinto modo los {to} bajo la falda' },
  width: { one: '«{one}» cuenta el ancho, aquí {to} y en la referencia {from}; «{other}» no', both: '«{a}» y «{b}» cuentan de distinto modo el ancho, aquí {to} y en la referencia {from}' },
  outline: { one: '«{one}» cuenta lo que hay dentro del contorno, «{other}» la caja que lo rodea o ningún ancho', both: '«{a}» y «{b}» cuentan de distinto modo el contorno' },
  gaps: { one: '«{one}» excluye los huecos, está lleno el {to} de la fila; «{other}» no', both: '«{a}» y «{b}» cuentan de distinto modo los huecos' },
  faces: { one: '«{one}» cuenta las caras que se tratan, «{other}» no', both: '«{a}» y «{b}» cuentan de distinto modo las caras que se tratan' },
  density: { one: '«{one}» cuenta lo densa que es la copa, «{other}» no', both: '«{a}» y «{b}» cuentan con escalas distintas lo densa que es la copa' },
  stage: { one: '«{one}» cuenta el estado fenológico, «{other}» no', both: '«{a}» y «{b}» cuentan de distinto modo el estado fenológico' }
};

/** Behind the reason: what it makes. */
export const REASON_EFFECTS: Translated<typeof EN_EFFECTS> = {
  more: ': un {share} más con «{a}».',
  less: ': un {share} menos con «{a}».',
  unknown: '. Lo que hace por sí solo no se puede decir.'
};
