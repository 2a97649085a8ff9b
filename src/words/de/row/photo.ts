import type { Part } from '../../language.ts';

/** Was von einer Krone in einem Foto gesagt wird. */
export const PHOTO: Part = {
  refusals: {
    'photo-flat': 'Das Bild hat nur eine Helligkeit, also lassen sich Laub und Hintergrund nicht unterscheiden. Gegen den Himmel oder ein weißes Tuch aufnehmen.',
    'photo-no-bands': 'Keine Höhenstufe ist markiert. Den Rahmen der Krone markieren.',
    'photo-few-pixels': 'Zwischen {from} m und {to} m wurden nur {pixels} Pixel gezählt; nötig sind mindestens {fewest}. Einen größeren Rahmen markieren, höhere Stufen nehmen, oder ein größeres Bild.',
    'photo-no-width': 'Zwischen {from} m und {to} m hat die Krone keine Breite. Ihre Breiten berichtigen, oder die Höhen des Rahmens.',
    'photo-saturated': 'Zwischen {from} m und {to} m zeigen {gaps} Pixel eine Lücke; mindestens {fewest} sind nötig, um die Blattfläche anzugeben. Das Laub ist dort für dieses Bild zu dicht.',
    'photo-mostly-saturated': '{share} % des Querschnitts zeigen zu wenige Lücken, um die Blattfläche anzugeben. Ein schärferes Bild aufnehmen, aus größerer Nähe, oder in einem früheren Stadium.',
    'photo-no-leaf': 'Der Rahmen zeigt so gut wie kein Laub: {found} m²/m³, und {least} m²/m³ ist das Kleinste, was behalten wird. Rahmen und Schwelle prüfen.',
    'photo-too-dense': 'Der Rahmen zeigt {found} m²/m³ Laub, und {most} m²/m³ ist das Höchste, was behalten wird. Rahmen, Schwelle und Breite der Krone prüfen.',
    'photo-not-picture': 'Die Datei ist kein Bild in JPEG, PNG oder WebP. Eines davon wählen; die meisten Telefone können ein Bild als JPEG speichern oder teilen.',
    'photo-empty': 'Die Datei ist leer. Eine andere wählen.',
    'photo-cut-short': 'Das Bild endet, bevor es seine Größe angibt. Die Datei wurde abgeschnitten: noch einmal kopieren.',
    'photo-file-large': 'Die Datei hat {size} MB; gelesen werden höchstens {most} MB. Das Bild kleiner speichern.',
    'photo-too-large': 'Das Bild hat {width} × {height} Pixel; gelesen werden höchstens {most} Millionen Pixel. Kleiner speichern.',
    'photo-too-small': 'Das Bild hat {width} × {height} Pixel; nötig sind mindestens {least} Pixel in jeder Richtung. Ein größeres aufnehmen.',
    'photo-undecodable': 'Das Bild ist beschädigt, oder von einer Art, die dieser Browser nicht liest. In einem anderen Programm öffnen und als JPEG speichern.'
  },
  fields: { photo: 'Foto', 'photo.bands': 'Foto' },
  formulas: {
    'gap-fraction': 'Lückenanteil',
    'leaf-density-by-gaps': 'Blattflächendichte aus den Lücken',
    'section-with-band': 'Querschnitt bis zu dieser Höhenstufe',
    'leaf-density-with-band': 'Mittlere Blattflächendichte bis zu dieser Höhenstufe'
  },
  symbols: {
    'gap-fraction.P': 'Lückenanteil',
    'gap-fraction.g': 'Pixel, die eine Lücke zeigen',
    'gap-fraction.n': 'gezählte Pixel',
    'leaf-density-by-gaps.P': 'Lückenanteil',
    'leaf-density-by-gaps.G': 'Teil seiner Fläche, den ein Blatt zeigt',
    'leaf-density-by-gaps.C': 'Klumpung',
    'leaf-density-by-gaps.W': 'Weg durch die Krone',
    A0: 'Querschnitt darunter',
    'section-with-band.z': 'Höhe der Höhenstufe',
    'leaf-density-with-band.z': 'Höhe der Höhenstufe',
    LADb: 'Blattflächendichte der Höhenstufe',
    'leaf-density-with-band.LAD0': 'Mittel darunter'
  },
  assumptions: {
    'photo.projection': { label: 'Laub, das ein Blick trifft', meaning: 'Teil seiner Fläche, den ein Blatt der Kamera im Mittel zeigt. Blätter, die gleichmäßig in alle Richtungen zeigen, zeigen die Hälfte.' },
    'photo.clumping': { label: 'Klumpung der Blätter', meaning: '1 sind zufällig verteilte Blätter. Blätter in Büscheln lassen mehr Lücken, darum liegt der wahre Faktor unter 1, und es ist mehr Laub da, als 1 angibt.' }
  }
};
