import type { Part } from '../../language.ts';

/** Why points of a laser scanner make no canopy, in English. */
export const LASER: Part = {
  refusals: {
    'laser-no-spacing': 'The row spacing was not given, and no row behind the first is seen beyond a free strip. Give it: --row-spacing 3.5.',
    'laser-too-few': '{found} points of the row are left; at least {fewest} are needed, in two height bands or more. Take more points, or check side, platform and ground.',
    'laser-skirt-above-top': 'The skirt at {skirt} m is not below the top of the points at {top} m. Lower it.',
    'laser-no-face': 'The row’s face stands {face} m from the alley’s middle, at or beyond the row line of rows {spacing} m apart. Check the row spacing.'
  }
};
