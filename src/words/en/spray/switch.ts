/** The switch beside the season ladder, in English: all that the first screen says of the spray model. */
export const spraySwitch = {
  label: 'Spray',
  failed: 'The spray model could not be loaded. Load the page again.'
} as const;
