import type { Part } from '../../language.ts';

/** What is said of a canopy in a photograph. */
export const PHOTO: Part = {
  refusals: {
    'photo-flat': 'A imagem tem uma só luminosidade, por isso não se distinguem folha e fundo. Fotografe contra o céu ou um pano branco.',
    'photo-no-bands': 'Não está marcada nenhuma faixa de altura. Marque a moldura da copa.',
    'photo-few-pixels': 'Entre {from} m e {to} m só se contaram {pixels} píxeis; são precisos pelo menos {fewest}. Marque uma moldura maior, use faixas mais altas, ou uma imagem maior.',
    'photo-no-width': 'Entre {from} m e {to} m a copa não tem largura. Corrija as larguras, ou as alturas da moldura.',
    'photo-saturated': 'Entre {from} m e {to} m, {gaps} píxeis mostram uma falha; são precisos pelo menos {fewest} para dizer a área foliar. A folha aí é densa demais para esta imagem.',
    'photo-mostly-saturated': '{share} % da secção mostra falhas a menos para dizer a área foliar. Tire uma imagem mais nítida, de mais perto, ou numa etapa anterior.',
    'photo-no-leaf': 'A moldura quase não mostra folha: {found} m²/m³, e o mínimo que se guarda é {least} m²/m³. Verifique a moldura e o limiar.',
    'photo-too-dense': 'A moldura mostra {found} m²/m³ de folha, e o máximo que se guarda é {most} m²/m³. Verifique a moldura, o limiar e a largura da copa.',
    'photo-not-picture': 'O ficheiro não é uma imagem JPEG, PNG ou WebP. Escolha uma destas; a maioria dos telemóveis pode guardar ou partilhar uma imagem como JPEG.',
    'photo-empty': 'O ficheiro está vazio. Escolha outro.',
    'photo-cut-short': 'A imagem acaba antes de dizer o seu tamanho. O ficheiro foi cortado: copie-o de novo.',
    'photo-file-large': 'O ficheiro tem {size} MB; leem-se no máximo {most} MB. Guarde a imagem mais pequena.',
    'photo-too-large': 'A imagem tem {width} × {height} píxeis; leem-se no máximo {most} milhões de píxeis. Guarde-a mais pequena.',
    'photo-too-small': 'A imagem tem {width} × {height} píxeis; são precisos pelo menos {least} em cada sentido. Use uma maior.',
    'photo-undecodable': 'A imagem está danificada, ou é de um tipo que este navegador não lê. Abra-a noutro programa e guarde-a como JPEG.'
  },
  fields: { photo: 'fotografia', 'photo.bands': 'fotografia' },
  formulas: {
    'gap-fraction': 'Fração de falhas',
    'leaf-density-by-gaps': 'Densidade de área foliar a partir das falhas',
    'section-with-band': 'Secção até esta faixa',
    'leaf-density-with-band': 'Densidade média de área foliar até esta faixa'
  },
  symbols: {
    'gap-fraction.P': 'fração de falhas',
    'gap-fraction.g': 'píxeis que mostram uma falha',
    'gap-fraction.n': 'píxeis contados',
    'leaf-density-by-gaps.P': 'fração de falhas',
    'leaf-density-by-gaps.G': 'parte da sua área que uma folha mostra',
    'leaf-density-by-gaps.C': 'agrupamento',
    'leaf-density-by-gaps.W': 'caminho através da copa',
    A0: 'secção abaixo',
    'section-with-band.z': 'altura da faixa',
    'leaf-density-with-band.z': 'altura da faixa',
    LADb: 'densidade de área foliar da faixa',
    'leaf-density-with-band.LAD0': 'média abaixo'
  },
  assumptions: {
    'photo.projection': { label: 'Folha que a vista encontra', meaning: 'Parte da sua área que uma folha mostra à câmara, em média. Folhas viradas por igual para todos os lados mostram metade.' },
    'photo.clumping': { label: 'Agrupamento das folhas', meaning: '1 são folhas dispostas ao acaso. Folhas em tufos deixam mais falhas do que isso, por isso o fator real é menor que 1 e há mais folha do que diz o 1.' }
  }
};
