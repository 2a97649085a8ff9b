import type { Canopy } from '#core/canopy/types.ts';

/** A canopy, or a part of one, as it stands in a document, a station a line. */
export function canopyLines(c: Partial<Canopy>): string[] {
  const members = Object.entries(c).map(([key, value]) => {
    const name = JSON.stringify(key);
    return Array.isArray(value) ? `  ${name}: [\n${value.map((p) => `    ${JSON.stringify(p)}`).join(',\n')}\n  ]` : `  ${name}: ${JSON.stringify(value)}`;
  });
  return `"canopy": {\n${members.join(',\n')}\n}`.split('\n');
}
