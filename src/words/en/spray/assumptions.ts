import type { AssumptionWords } from '../../words.ts';

const drops = (name: string): AssumptionWords => ({
  label: `Median drop, ${name}`,
  meaning: 'Half of the spray is in smaller drops. Classes compare nozzles; they have no bounds in µm.'
});

/** Every constant of the spray model. */
export const SPRAY_ASSUMPTION_WORDS: Readonly<Record<string, AssumptionWords>> = {
  'spray.projection': { label: 'Leaf that faces the spray', meaning: 'Part of the leaf area that stands in the way, with leaves behind each other counted off. Fitted to one vineyard series; it moves the answer most.' },
  'spray.leaf-beta': { label: 'Slip round a leaf', meaning: 'The larger, the more small drops follow the air round a leaf.' },
  'spray.leaf-size': { label: 'Leaf size', meaning: 'Width of a leaf across the air.' },
  'spray.wood-beta': { label: 'Slip round a twig', meaning: 'The larger, the more small drops follow the air round a twig.' },
  'spray.wood-size': { label: 'Twig size', meaning: 'Thickness of the wood that catches drops.' },
  'spray.wood-density': { label: 'Wood in a bare tree', meaning: 'Silhouette of the wood in a cubic metre of canopy.' },
  'spray.canopy-drag': { label: 'Drag of the canopy', meaning: 'How strongly leaf and wood slow the air.' },
  'spray.entrainment': { label: 'Air carried along by a curtain', meaning: 'How fast the air from a slot takes still air with it and slows.' },
  'spray.round-entrainment': { label: 'Air carried along by a spout', meaning: 'How fast the air from a round outlet takes still air with it and slows.' },
  'spray.plume-spread': { label: 'Spread of a nozzle’s spray', meaning: 'Standard deviation of its direction, as a part of the cone’s full angle.' },
  'spray.shell-share': { label: 'Depth of the leafy shell', meaning: 'Outer part of the half width in which leaf stands densest.' },
  'spray.core-ratio': { label: 'Leaf inside the crown', meaning: 'Leaf density of the inner part over that of the shell.' },
  'spray.cross-wind': { label: 'Wind across the rows', meaning: 'At the top of the canopy, from the left. It bends the air in the drawing. The model does not show what wind does to deposit.' },
  'spray.wind-decay': { label: 'Wind lost in the canopy', meaning: 'How fast wind falls from the top of the canopy down.' },
  'spray.delta-t': { label: 'Delta T for drying drops', meaning: 'Dry minus wet bulb. The larger, the faster drops shrink in flight. Where the day’s weather was typed it comes from there, unless you set it here.' },
  'spray.fine-part': { label: 'Fine part of the spectrum', meaning: 'Drop size below which a tenth of the spray is, over the median size.' },
  'spray.non-volatile': { label: 'What does not evaporate', meaning: 'Part of the liquid that stays when a drop has dried, by volume.' },
  'spray.release-speed': { label: 'Speed out of the nozzle', meaning: 'Speed at which drops leave the nozzle.' },
  'spray.rows': { label: 'Treated rows each side', meaning: 'Rows of the block on each side of the machine. Beyond the last is outside the block.' },
  'spray.vmd-XF': drops('extremely fine'),
  'spray.vmd-VF': drops('very fine'),
  'spray.vmd-F': drops('fine'),
  'spray.vmd-M': drops('medium'),
  'spray.vmd-C': drops('coarse'),
  'spray.vmd-VC': drops('very coarse'),
  'spray.vmd-XC': drops('extremely coarse'),
  'spray.vmd-UC': drops('ultra coarse'),
  'spray.vmd-unknown': { label: 'Median drop, class not known', meaning: 'For a nozzle whose table prints no droplet class.' }
};
