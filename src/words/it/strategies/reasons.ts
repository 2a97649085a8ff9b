import type { REASON_EFFECTS as EN_EFFECTS } from '../../en/strategies/reasons.ts';
import type { Translated } from '../../translation.ts';
import type { Template } from '../../words.ts';

/**
 * Why two dose indices differ, by the engine's code: `one` where one strategy counts what is substituted and the other does not, `both` where they count
 * it differently. `{one}` counts, `{other}` does not; `{from}` and `{to}` are what is substituted.
 */
export const REASON_TEMPLATES: Readonly<Record<string, { readonly one: Template; readonly both: Template }>> = {
  reference: {
    one: 'Sulla chioma di riferimento di {trv} «{a}» dà {shareA} della dose, «{b}» {shareB}',
    both: 'Sulla chioma di riferimento di {trv} «{a}» dà {shareA} della dose, «{b}» {shareB}'
  },
  law: { one: '«{one}» è una retta che conserva {least} della dose dove non c’è nulla; rispetto a una in proporzione ciò fa', both: '«{a}» e «{b}» sono rette che conservano parti diverse della dose dove non c’è nulla' },
  spacing: { one: '«{one}» conta la distanza tra i filari, qui {to} e nel riferimento {from}; «{other}» no', both: '«{a}» e «{b}» contano in modo diverso la distanza tra i filari, qui {to} e nel riferimento {from}' },
  height: { one: '«{one}» conta l’altezza della chioma, qui {to} e nel riferimento {from}; «{other}» no', both: '«{a}» e «{b}» contano in modo diverso l’altezza della chioma, qui {to} e nel riferimento {from}' },
  skirt: { one: '«{one}» prende l’altezza da terra, «{other}» non conta il tratto sotto la chioma, {to}', both: '«{a}» e «{b}» contano in modo diverso il tratto sotto la chioma, {to}' },
  width: { one: '«{one}» conta la larghezza, qui {to} e nel riferimento {from}; «{other}» no', both: '«{a}» e «{b}» contano in modo diverso la larghezza, qui {to} e nel riferimento {from}' },
  outline: { one: '«{one}» conta ciò che sta dentro il contorno, «{other}» il parallelepipedo intorno o nessuna larghezza', both: '«{a}» e «{b}» contano in modo diverso il contorno' },
  gaps: { one: '«{one}» esclude i vuoti, è pieno {to} del filare; «{other}» no', both: '«{a}» e «{b}» contano in modo diverso i vuoti' },
  faces: { one: '«{one}» conta le facce trattate, «{other}» no', both: '«{a}» e «{b}» contano in modo diverso le facce trattate' },
  density: { one: '«{one}» conta quanto è densa la chioma, «{other}» no', both: '«{a}» e «{b}» contano con scale diverse quanto è densa la chioma' },
  stage: { one: '«{one}» conta la fase fenologica, «{other}» no', both: '«{a}» e «{b}» contano in modo diverso la fase fenologica' }
};

/** Behind the reason: what it makes. */
export const REASON_EFFECTS: Translated<typeof EN_EFFECTS> = {
  more: ': {share} in più con «{a}».',
  less: ': {share} in meno con «{a}».',
  unknown: '. Che cosa fa da solo non si può dire.'
};
