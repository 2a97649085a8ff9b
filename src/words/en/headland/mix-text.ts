import type { MixGroup } from '#core/mix/order.ts';
import type { LoadsState } from '#core/mix/state.ts';
import type { Formulation } from '#core/mix/types.ts';

/** What the Loads step and the command line say alike, in English. */
export const mixText = {
  areaFrom: { mix: 'as entered for this treatment', block: 'of the block', rows: 'by rows, their length and spacing' } satisfies Record<LoadsState['areaFrom'], string>,
  volumeFrom: { check: 'as measured on the headland', setting: 'as the setting says, not yet measured' } satisfies Record<LoadsState['volumeFrom'], string>,
  groups: {
    conditioners: 'water conditioner',
    'soluble-powders': 'soluble powder or granule',
    'dry-powders': 'dry powder or granule',
    'liquid-flowables': 'liquid flowable',
    emulsifiables: 'emulsifiable',
    solutions: 'solution',
    adjuvants: 'adjuvant',
    unknown: 'kind not known'
  } satisfies Record<MixGroup, string>,
  formulations: {
    WP: 'WP, wettable powder',
    WG: 'WG, water-dispersible granule',
    DF: 'DF, dry flowable',
    SG: 'SG, soluble granule',
    SP: 'SP, soluble powder',
    SC: 'SC, suspension concentrate',
    SE: 'SE, suspo-emulsion',
    F: 'F, flowable',
    ME: 'ME, micro-emulsion',
    CS: 'CS, capsule suspension',
    EC: 'EC, emulsifiable concentrate',
    EW: 'EW, emulsion in water',
    OD: 'OD, oil dispersion',
    SL: 'SL, soluble liquid',
    adjuvant: 'adjuvant',
    conditioner: 'water conditioner',
    other: 'other, not listed'
  } satisfies Record<Formulation, string>,
  order: {
    water: (share: string) => `Water: at least ${share} of it before the first product.`,
    agitate: 'Agitation on, and left on until the tank is empty.',
    product: (name: string, group: string) => `${name} (${group}). Let it disperse wholly before the next.`,
    one: (name: string, group: string) => `${name} (${group}).`,
    'fill-up': 'Fill up with water to what the load takes, then go and spray: do not let a mix stand.'
  },
  labelFirst: 'The order on the labels comes first; look for it on each. Where they say nothing, in this order:',
  orderNotes: [
    'Order by kind of product: North Dakota State University, 2021. Conditioners first, the share of water and adjuvants last are common practice.',
    'Another order in use agitates after the wettable products and ends with surfactants; some fill the tank half before mixing.',
    'Before a mix that you have not made before: a jar test with the same water, and a look whether the mix is allowed.'
  ],
  cautions: [
    'Handling the concentrate is the riskiest step of the day: protective equipment as each label says, clean water within reach, nobody else near.',
    'Fill from a hose that cannot suck back. Never leave a tank that is filling.',
    'Weigh on a scale, measure in a jug: caps and tank marks can be a tenth off.'
  ],
  rinse: {
    tenfold: (water: string, residual: string) => `Rinse with ${water}: ten times the ${residual} that stay behind.`,
    tenth: (water: string) => `Rinse with ${water}: a tenth of the tank, since what stays behind is not known.`,
    left: (once: string, thrice: string) => `Used at once it leaves ${once} of the strength; in three parts, each sprayed out, ${thrice}.`,
    out: 'Spray the rinsing out on the crop, thin and moving, as label and local law allow; never on one spot or into a drain.'
  },
  hours: (h: number, min: string) => (h === 0 ? `${min} min` : `${h} h ${min.padStart(2, '0')} min`)
} as const;
