import type { Part } from '../../language.ts';

/** Warum Punkte eines Laserscanners keine Krone ergeben. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'Der Reihenabstand wurde nicht angegeben, und hinter der ersten Reihe ist jenseits eines freien Streifens keine zu sehen. Angeben: --row-spacing 3.5.',
    'laser-too-few': '{found} Punkte der Reihe sind übrig; nötig sind mindestens {fewest}, in zwei Höhenstufen oder mehr. Mehr Punkte nehmen, oder Seite, Plattform und Boden prüfen.',
    'laser-skirt-above-top': 'Der Kronenansatz bei {skirt} m liegt nicht unter der Spitze der Punkte bei {top} m. Tiefer setzen.',
    'laser-no-face': 'Die Seite der Reihe steht {face} m von der Mitte der Fahrgasse, an oder hinter der Reihenlinie bei {spacing} m Reihenabstand. Den Reihenabstand prüfen.',
    'las-empty': 'Die Datei ist leer. Eine andere wählen.',
    'las-not-las': 'Die Datei ist weder LAS noch LAZ: Sie beginnt nicht mit LASF und ist auch keine Texttabelle. Die Punkte als LAS 1.2 bis 1.4, LAZ oder CSV exportieren.',
    'las-header-short': 'Die Datei endet in ihrem Kopf: {found} Bytes, und nötig sind mindestens {least}. Noch einmal kopieren oder exportieren.',
    'las-version': 'Die Datei ist LAS {version}; gelesen werden 1.0 bis 1.4. Als eine davon exportieren.',
    'las-format': 'Die Datei enthält Punkte im Format {format}; gelesen werden 0 bis {most}. Neu exportieren.',
    'las-record-short': 'Ein Punkt im Format {format} braucht {least} Bytes, aber die Datei sagt {found}. Sie ist beschädigt: noch einmal exportieren.',
    'las-scale': 'Der Maßstab von {axis} ist {found}; zulässig ist über 0 und bis {most}. Der Kopf ist beschädigt, oder die Punkte sind zu grob, um eine Krone zu zeigen: mit einem Maßstab von 0.001 exportieren.',
    'las-offset': 'Der Versatz von {axis} ist {found}, das ist keine Zahl. Der Kopf ist beschädigt: die Datei noch einmal exportieren.',
    'las-no-points': 'Die Datei enthält keine Punkte, oder nur solche, die sie als zurückgehalten oder Rauschen kennzeichnet. Mit Punkten exportieren.',
    'las-cut-short': 'Die Datei nennt {wanted} Punkte, endet aber davor. Sie wurde abgeschnitten: noch einmal kopieren.',
    'las-damaged': 'Nach {found} von {wanted} Punkten lässt sich der Rest nicht entpacken. Die Datei ist beschädigt: noch einmal kopieren oder exportieren.',
    'las-laz-large': 'Die LAZ-Datei hat {size} MB; entpackt werden höchstens {most} MB. Die Fahrgasse ausschneiden, oder als LAS exportieren, das größer sein darf.',
    'las-far-apart': 'Die Punkte liegen {apart} km auseinander; {most} km sind das Höchste. Eine Fahrgasse mit ihren zwei Reihen ausschneiden.'
  }
};
