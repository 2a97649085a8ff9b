import type { Part } from '../../language.ts';

/** Why points of a laser scanner make no canopy. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'La distanza tra i filari non è stata indicata, e dietro il primo non si vede alcun filare oltre una striscia libera. Indicarla; dalla riga di comando, --row-spacing 3.5.',
    'laser-too-few': 'Restano {found} punti del filare; ne servono almeno {fewest}, in due o più fasce di altezza. Prendere più punti, o verificare lato, supporto e terreno.',
    'laser-skirt-above-top': 'La base della chioma a {skirt} m non è sotto la cima dei punti a {top} m. Abbassarla.',
    'laser-no-face': 'La faccia del filare sta a {face} m dal centro dell’interfila, sulla linea del filare o oltre, con filari a {spacing} m. Verificare la distanza tra i filari.',
    'las-empty': 'Il file è vuoto. Sceglierne un altro.',
    'las-not-las': 'Il file non è né LAS né LAZ: non comincia con LASF, e non è una tabella di testo. Esportare i punti come LAS da 1.2 a 1.4, LAZ o CSV.',
    'las-header-short': 'Il file finisce dentro la sua intestazione: {found} byte, e ne servono almeno {least}. Copiarlo o esportarlo di nuovo.',
    'las-version': 'Il file è LAS {version}; si leggono da 1.0 a 1.4. Esportarlo come uno di questi.',
    'las-format': 'Il file contiene punti di formato {format}; si leggono da 0 a {most}. Esportarlo di nuovo.',
    'las-record-short': 'Un punto di formato {format} occupa {least} byte, ma il file dice {found}. È danneggiato: esportarlo di nuovo.',
    'las-scale': 'La scala di {axis} è {found}; è ammesso sopra 0 e fino a {most}. L’intestazione è danneggiata, o i punti sono troppo grossolani per mostrare una chioma: esportare con una scala di 0.001.',
    'las-offset': 'Lo spostamento di {axis} è {found}, che non è un numero. L’intestazione è danneggiata: esportare di nuovo il file.',
    'las-no-points': 'Il file non contiene punti, o solo punti che segna come esclusi o rumore. Esportarlo con i punti.',
    'las-cut-short': 'Il file annuncia {wanted} punti ma finisce prima. È troncato: copiarlo di nuovo.',
    'las-damaged': 'Dopo {found} di {wanted} punti il resto non si può decomprimere. Il file è danneggiato: copiarlo o esportarlo di nuovo.',
    'las-laz-large': 'Il file LAZ ha {size} MB; se ne decomprimono al massimo {most} MB. Ritagliare l’interfila, o esportare come LAS, che può essere più grande.',
    'las-far-apart': 'I punti distano {apart} km; {most} km è il massimo. Ritagliare una sola interfila con i suoi due filari.'
  }
};
