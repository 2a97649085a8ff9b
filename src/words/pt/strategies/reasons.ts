import type { REASON_EFFECTS as EN_EFFECTS } from '../../en/strategies/reasons.ts';
import type { Translated } from '../../translation.ts';
import type { Template } from '../../words.ts';

/**
 * Why two dose indices differ, by the engine's code: `one` where one strategy counts what is substituted and the other does not, `both` where they count
 * it differently. `{one}` counts, `{other}` does not; `{from}` and `{to}` are what is substituted.
 */
export const REASON_TEMPLATES: Readonly<Record<string, { readonly one: Template; readonly both: Template }>> = {
  reference: {
    one: 'Na copa de referência de {trv}, “{a}” dá {shareA} da dose, “{b}” {shareB}',
    both: 'Na copa de referência de {trv}, “{a}” dá {shareA} da dose, “{b}” {shareB}'
  },
  law: { one: '“{one}” é uma reta que conserva {least} da dose onde nada há; face a uma em proporção, isso faz', both: '“{a}” e “{b}” são retas que conservam partes diferentes da dose onde nada há' },
  spacing: { one: '“{one}” conta a distância entre linhas, aqui {to} e na referência {from}; “{other}” não', both: '“{a}” e “{b}” contam de forma diferente a distância entre linhas, aqui {to} e na referência {from}' },
  height: { one: '“{one}” conta a altura da copa, aqui {to} e na referência {from}; “{other}” não', both: '“{a}” e “{b}” contam de forma diferente a altura da copa, aqui {to} e na referência {from}' },
  skirt: { one: '“{one}” toma a altura a partir do solo, “{other}” não conta os {to} debaixo da saia', both: '“{a}” e “{b}” contam de forma diferente os {to} debaixo da saia' },
  width: { one: '“{one}” conta a largura, aqui {to} e na referência {from}; “{other}” não', both: '“{a}” e “{b}” contam de forma diferente a largura, aqui {to} e na referência {from}' },
  outline: { one: '“{one}” conta o que está dentro do contorno, “{other}” a caixa à sua volta ou largura nenhuma', both: '“{a}” e “{b}” contam de forma diferente o contorno' },
  gaps: { one: '“{one}” deixa de fora as falhas, está preenchido {to} da linha; “{other}” não', both: '“{a}” e “{b}” contam de forma diferente as falhas' },
  faces: { one: '“{one}” conta as faces que se tratam, “{other}” não', both: '“{a}” e “{b}” contam de forma diferente as faces que se tratam' },
  density: { one: '“{one}” conta quão densa é a copa, “{other}” não', both: '“{a}” e “{b}” contam com escalas diferentes quão densa é a copa' },
  stage: { one: '“{one}” conta o estado fenológico, “{other}” não', both: '“{a}” e “{b}” contam de forma diferente o estado fenológico' }
};

/** Behind the reason: what it makes. */
export const REASON_EFFECTS: Translated<typeof EN_EFFECTS> = {
  more: ': {share} mais com “{a}”.',
  less: ': {share} menos com “{a}”.',
  unknown: '. O que isso faz, só por si, não se pode dizer.'
};
