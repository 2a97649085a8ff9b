import type { Part } from '../../language.ts';

/** Why points of a laser scanner make no canopy, in English. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'The row spacing was not given, and no row behind the first is seen beyond a free strip. Give it; on the command line, --row-spacing 3.5.',
    'laser-too-few': '{found} points of the row are left; at least {fewest} are needed, in two height bands or more. Take more points, or check side, platform and ground.',
    'laser-skirt-above-top': 'The skirt at {skirt} m is not below the top of the points at {top} m. Lower it.',
    'laser-no-face': 'The row’s face stands {face} m from the alley’s middle, at or beyond the row line of rows {spacing} m apart. Check the row spacing.',
    'las-empty': 'The file is empty. Choose another.',
    'las-not-las': 'The file is neither LAS nor LAZ: it does not begin with LASF, nor is it a table of text. Export the points as LAS 1.2 to 1.4, LAZ or CSV.',
    'las-header-short': 'The file ends within its header: {found} bytes, and at least {least} are needed. Copy or export it again.',
    'las-version': 'The file is LAS {version}; 1.0 to 1.4 are read. Export it as one of these.',
    'las-format': 'The file holds points of format {format}; 0 to {most} are read. Export it anew.',
    'las-record-short': 'A point of format {format} takes {least} bytes, but the file says {found}. It is damaged: export it again.',
    'las-scale': 'The scale of {axis} is {found}; above 0 and up to {most} is allowed. The header is damaged, or the points are too coarse to show a canopy: export with a scale of 0.001.',
    'las-offset': 'The offset of {axis} is {found}, which is no number. The header is damaged: export the file again.',
    'las-no-points': 'The file holds no points, or none that it does not mark as withheld or noise. Export it with points.',
    'las-cut-short': 'The file tells of {wanted} points but ends before that. It was cut off: copy it again.',
    'las-damaged': 'After {found} of {wanted} points the rest cannot be unpacked. The file is damaged: copy or export it again.',
    'las-laz-large': 'The LAZ file has {size} MB; at most {most} MB are unpacked. Cut out the alley, or export as LAS, which may be larger.',
    'las-far-apart': 'The points lie {apart} km apart; {most} km is the most. Cut out one alley with its two rows.'
  }
};
