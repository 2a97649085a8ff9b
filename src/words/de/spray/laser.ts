import type { Part } from '../../language.ts';

/** Warum Punkte eines Laserscanners keine Krone ergeben. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'Der Reihenabstand wurde nicht angegeben, und hinter der ersten Reihe ist jenseits eines freien Streifens keine zu sehen. Angeben: --row-spacing 3.5.',
    'laser-too-few': '{found} Punkte der Reihe sind übrig; nötig sind mindestens {fewest}, in zwei Höhenstufen oder mehr. Mehr Punkte nehmen, oder Seite, Plattform und Boden prüfen.',
    'laser-skirt-above-top': 'Der Kronenansatz bei {skirt} m liegt nicht unter der Spitze der Punkte bei {top} m. Tiefer setzen.',
    'laser-no-face': 'Die Seite der Reihe steht {face} m von der Mitte der Fahrgasse, an oder hinter der Reihenlinie bei {spacing} m Reihenabstand. Den Reihenabstand prüfen.'
  }
};
