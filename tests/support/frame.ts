import { readFileSync } from 'node:fs';
import { DATA } from '../measured/stations.ts';
import type { LasPoint } from './las.ts';

/** The points of the measured frame: x across, y along, z above ground. */
export const framePoints = (): LasPoint[] =>
  readFileSync(new URL('lidar-fuji-frame-every-4th.csv', DATA), 'utf8').trim().split('\n').slice(1).map((line) => {
    const [x, y, z, intensity] = line.split(',').map(Number);
    return { x: x!, y: y!, z: z!, intensity: intensity! };
  });

/** The same points as a survey would give them: on a map, rows turned by so many degrees from north to east. */
export const onMap = (points: readonly LasPoint[], deg: number, [east, north, up]: readonly [number, number, number]): LasPoint[] => {
  const [sin, cos] = [Math.sin((deg * Math.PI) / 180), Math.cos((deg * Math.PI) / 180)];
  return points.map((p) => ({ ...p, x: east + p.x * cos + p.y * sin, y: north - p.x * sin + p.y * cos, z: up + p.z }));
};
