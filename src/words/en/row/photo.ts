import type { Part } from '../../language.ts';

/** What is said of a canopy in a photograph, in English. */
export const PHOTO: Part = {
  refusals: {
    'photo-flat': 'The picture has one brightness alone, so leaf and background cannot be told apart. Take it against the sky or a white sheet.',
    'photo-no-bands': 'No height band is marked. Mark the frame of the canopy.',
    'photo-few-pixels': 'Between {from} m and {to} m only {pixels} pixels were counted; at least {fewest} are needed. Mark a larger frame, take higher bands, or a larger picture.',
    'photo-no-width': 'Between {from} m and {to} m the canopy has no width. Correct its widths, or the heights of the frame.',
    'photo-saturated': 'Between {from} m and {to} m {gaps} pixels show a gap; at least {fewest} are needed to tell leaf area. The leaf is too dense there for this picture.',
    'photo-mostly-saturated': '{share} % of the section shows too few gaps to tell leaf area. Take a sharper picture, from nearer, or at an earlier stage.',
    'photo-no-leaf': 'The frame shows next to no leaf: {found} m²/m³, and {least} m²/m³ is the least that is kept. Check the frame and the threshold.',
    'photo-too-dense': 'The frame shows {found} m²/m³ of leaf, and {most} m²/m³ is the most that is kept. Check the frame, the threshold and the width of the canopy.',
    'photo-not-picture': 'The file is no JPEG, PNG or WebP picture. Choose one of these; most phones can save or share a picture as JPEG.',
    'photo-empty': 'The file is empty. Choose another.',
    'photo-cut-short': 'The picture ends before it tells its size. The file was cut off: copy it again.',
    'photo-file-large': 'The file has {size} MB; at most {most} MB are read. Save the picture smaller.',
    'photo-too-large': 'The picture is {width} × {height} pixels; at most {most} million pixels are read. Save it smaller.',
    'photo-too-small': 'The picture is {width} × {height} pixels; at least {least} pixels each way are needed. Take a larger one.',
    'photo-undecodable': 'The picture is damaged, or of a kind that this browser does not read. Open it in another program and save it as JPEG.'
  },
  fields: { photo: 'photograph', 'photo.bands': 'photograph' },
  formulas: {
    'gap-fraction': 'Gap fraction',
    'leaf-density-by-gaps': 'Leaf area density from the gaps',
    'section-with-band': 'Section up to this band',
    'leaf-density-with-band': 'Mean leaf area density up to this band'
  },
  symbols: {
    'gap-fraction.P': 'gap fraction',
    'gap-fraction.g': 'pixels that show a gap',
    'gap-fraction.n': 'pixels counted',
    'leaf-density-by-gaps.P': 'gap fraction',
    'leaf-density-by-gaps.G': 'part of its area that a leaf shows',
    'leaf-density-by-gaps.C': 'clumping',
    'leaf-density-by-gaps.W': 'way through the canopy',
    A0: 'section below',
    'section-with-band.z': 'height of the band',
    'leaf-density-with-band.z': 'height of the band',
    LADb: 'leaf area density of the band',
    'leaf-density-with-band.LAD0': 'mean below'
  },
  assumptions: {
    'photo.projection': { label: 'Leaf that a view meets', meaning: 'Part of its area that a leaf shows to the camera, on average. Leaves that face every way alike show half.' },
    'photo.clumping': { label: 'Clumping of leaves', meaning: '1 is leaves placed at random. Leaves that stand in clumps leave more gaps than that, so the true factor is below 1 and there is more leaf than 1 tells.' }
  }
};
