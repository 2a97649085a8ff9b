import type { Part } from '../../language.ts';

/** Why points of a laser scanner make no canopy. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'A distância entre linhas não foi indicada, e não se vê nenhuma linha atrás da primeira depois de uma faixa livre. Indique-a: --row-spacing 3.5.',
    'laser-too-few': 'Restam {found} pontos da linha; são precisos pelo menos {fewest}, em duas faixas de altura ou mais. Use mais pontos, ou verifique lado, suporte e solo.',
    'laser-skirt-above-top': 'A saia a {skirt} m não está abaixo do topo dos pontos a {top} m. Baixe-a.',
    'laser-no-face': 'A face da linha está a {face} m do meio da entrelinha, no eixo da linha ou para lá dele com linhas a {spacing} m. Verifique a distância entre linhas.',
    'las-empty': 'O ficheiro está vazio. Escolha outro.',
    'las-not-las': 'O ficheiro não é LAS nem LAZ: não começa por LASF, nem é uma tabela de texto. Exporte os pontos como LAS 1.2 a 1.4, LAZ ou CSV.',
    'las-header-short': 'O ficheiro acaba dentro do seu cabeçalho: {found} bytes, e são precisos pelo menos {least}. Copie-o ou exporte-o de novo.',
    'las-version': 'O ficheiro é LAS {version}; leem-se 1.0 a 1.4. Exporte-o como um destes.',
    'las-format': 'O ficheiro contém pontos do formato {format}; leem-se de 0 a {most}. Exporte-o de novo.',
    'las-record-short': 'Um ponto do formato {format} ocupa {least} bytes, mas o ficheiro diz {found}. Está danificado: exporte-o de novo.',
    'las-scale': 'A escala de {axis} é {found}; admite-se acima de 0 e até {most}. O cabeçalho está danificado, ou os pontos são grosseiros demais para mostrar uma copa: exporte com uma escala de 0,001.',
    'las-offset': 'O deslocamento de {axis} é {found}, que não é um número. O cabeçalho está danificado: exporte o ficheiro de novo.',
    'las-no-points': 'O ficheiro não contém pontos, ou nenhum que não marque como retido ou ruído. Exporte-o com pontos.',
    'las-cut-short': 'O ficheiro anuncia {wanted} pontos mas acaba antes disso. Foi cortado: copie-o de novo.',
    'las-damaged': 'Depois de {found} de {wanted} pontos, o resto não pode ser descompactado. O ficheiro está danificado: copie-o ou exporte-o de novo.',
    'las-laz-large': 'O ficheiro LAZ tem {size} MB; descompactam-se no máximo {most} MB. Recorte a entrelinha, ou exporte como LAS, que pode ser maior.',
    'las-far-apart': 'Os pontos estão a {apart} km uns dos outros; {most} km é o máximo. Recorte uma entrelinha com as suas duas linhas.'
  }
};
