/** Settings that were saved for a rung before. */
export const earlierWords = {
  title: 'Settings saved before',
  line: (n: number) => String(n),
  at: (moment: string) => `saved ${moment}`,
  back: 'Go back to it',
  backTo: (moment: string) => `Go back to the setting of ${moment}`,
  same: 'set now',
  unordered: 'The clock of this device was set back between some of these: the order is right, the times may not be.',
  nozzlesShut: (n: number) => (n === 0 ? 'all nozzles open' : `${n} nozzle${n === 1 ? '' : 's'} shut`)
} as const;
