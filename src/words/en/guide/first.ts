/** What a first visitor may try on the demo block; each line goes when it is done. */
export const firstSteps = {
  name: 'Three things to try',
  steps: {
    top: 'Drag the canopy top, or type it: water follows.',
    shut: 'Shut a nozzle that sprays over the trees.',
    why: 'Read how the water was worked out.'
  },
  done: (line: string) => `Done: ${line}`,
  away: 'Hide these'
} as const;
