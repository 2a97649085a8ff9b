import { philox, unit, type Words } from '#core/canopy/draws/random.ts';

/** Invented canopies as a CSV table: slender young trees to wide old ones, spread evenly; the same whenever they are made. */
export function madeUpCanopies(count: number): string {
  const words: Words = { a: 0, b: 0, c: 0, d: 0 };
  const lines = ['block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,filled_fraction,lad_m2_per_m3'];
  for (let i = 0; i < count; i++) {
    Object.assign(words, { a: i, b: 0, c: 0, d: 0 });
    philox(words, 2031, 0);
    const [u, v, w, z] = [unit(words.a), unit(words.b), unit(words.c), unit(words.d)];
    const height = 2 + 3.5 * u;
    const spacing = 2.8 + 1.6 * v + 0.35 * height * u;
    const width = 0.7 + (1.1 + 1.5 * u) * w;
    const skirt = 0.3 + 0.5 * z;
    lines.push([`Made up ${i + 1}`, spacing.toFixed(2), height.toFixed(2), skirt.toFixed(2), width.toFixed(2), (0.8 + 0.2 * v).toFixed(2), (1.2 + 1.4 * z).toFixed(2)].join(','));
  }
  return lines.join('\n') + '\n';
}
