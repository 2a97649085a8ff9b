/** Labels of the Headland station's frame, in English. Each step brings its own. */
export const headlandScreen = {
  steps: {
    before: 'Before you start',
    speed: 'Speed',
    output: 'Output',
    result: 'Result',
    fitting: 'Nozzle fitting',
    loads: 'Loads',
    record: 'Record',
    card: 'Cab card'
  },
  step: 'Step',
  place: (n: number, all: number) => `step ${n} of ${all}`,
  option: (n: number, name: string) => `${n}  ${name}`,
  back: 'Back',
  next: 'Next',
  loading: 'Loading …',
  failed: 'This step could not be loaded. Load the page again.'
} as const;
