import type { Language } from '../words.ts';

export const VALIDITY: Language['validity'] = {
  'blind-to-canopy': 'Não atende à copa.',
  'blind-to-height-and-width': 'Não atende à altura nem à largura.',
  'blind-to-row-spacing': 'Não atende à distância entre linhas nem à largura.',
  'retired-for-new-labels': 'Só rótulos mais antigos; os mais recentes usam a parede foliar.',
  'blind-to-width-and-density': 'Não atende à largura nem à densidade.',
  'suits-narrow-walls': 'Feita para paredes estreitas, não para árvores redondas ou largas.',
  'under-doses-small-trees': 'Em proporção ao volume, as árvores mais pequenas receberam pouco nos ensaios.',
  'box-volume': 'Uma caixa contém mais do que a copa lá dentro; não introduza volumes reais.',
  'early-rate-disputed': 'As fontes não concordam quanto a doses mais baixas no início da época.',
  'memory-law': 'A reta é de memória: verifique-a no registo atual.',
  'swiss-labels-only': 'Só para rótulos suíços.',
  'volume-by-crop': 'Os litros por linha unitária variam com a cultura, de 9 a 50.',
  'run-off-judged-in-field': 'Avalie o ponto de escorrimento no campo.',
  'measured-in-citrus': 'Medido em citrinos.',
  'outline-volume': 'Para o volume dentro do contorno real, nunca para a caixa.',
  'sensor-coefficient': 'Feita para um pulverizador que deteta as falhas.',
  'leaf-density-rarely-known': 'A densidade foliar raramente é medida; o valor predefinido é uma estimativa.',
  'recovery-uncertain': 'A parte que fica varia muito.'
};
