import type { TickItem, ToleranceId } from '#core/check/types.ts';

interface ItemWords {
  readonly name: string;
  /** How to look, where the name does not say it. */
  readonly how?: string;
}

/** Labels of the first four steps on the headland, in English. What a fault does to the result is a finding of the engine. */
export const checkScreen = {
  items: {
    clean: { name: 'Machine is clean', how: 'Tank, lines and outside rinsed.' },
    leaks: { name: 'No leaks', how: 'Pump running, hoses and fittings under pressure.' },
    'nozzles-placed': { name: 'Right nozzles in the right places', how: 'Type, size and side as in the setting.' },
    filters: { name: 'Filters clean', how: 'Suction, pressure and nozzle filters.' },
    'nozzles-brushed': { name: 'Nozzles brushed clean', how: 'Soft brush and water, never wire.' },
    drips: { name: 'No drips when shut', how: 'Watch each nozzle for some seconds after shutting off.' },
    'gauge-rest': { name: 'Gauge at zero at rest', how: 'Pump off, pressure let out.' },
    'gauge-scale': { name: 'Gauge fits the pressure', how: 'Working pressure in the middle of the dial, fine divisions.' },
    agitation: { name: 'Agitation works', how: 'Surface moving while the nozzles spray.' },
    guards: { name: 'Guards on: shaft, fan, belts', how: 'Look with everything stopped.' },
    pto: { name: 'PTO speed is right', how: 'By tachometer, at the engine speed used for spraying.' },
    'water-only': { name: 'Clean water only in the tank', how: 'No product until the check is done.' },
    protection: { name: 'Protective equipment on', how: 'As the product label says: residue is still in the machine.' },
    watch: { name: 'Stopwatch', how: 'Or the one here.' },
    tape: { name: 'Measuring tape', how: 'And marks for both ends.' },
    jug: { name: 'Graduated jug' },
    hoses: { name: 'Hoses to lead the spray into the jug' },
    gauge: { name: 'Second gauge', how: 'Known to be right.' },
    brush: { name: 'Soft brush', how: 'And spare nozzles and filters.' },
    ribbon: { name: 'Ribbon for the tree top' },
    paper: { name: 'Water-sensitive paper' },
    'half-tank': { name: 'Tank about half full' },
    'fan-on': { name: 'Fan and pump running' },
    'in-alley': { name: 'In the alley, not on the road' },
    'spraying-gear': { name: 'Spraying gear and engine speed' },
    'rolling-start': { name: 'Up to speed before the first mark' }
  } satisfies Record<TickItem, ItemWords> as Record<TickItem, ItemWords>,

  before: {
    intro: 'Walk round the machine once. A fault is written down with what it does to the result.',
    safety: 'Shaft, fan and pressure can kill: look and reach with everything stopped. Clean water only. Wear what the product label asks for; local rules come first.',
    walk: 'Walk round the machine',
    tools: 'Take along',
    progress: (done: number, all: number) => `${done} of ${all}`,
    faults: (n: number) => (n === 0 ? 'no fault found so far' : n === 1 ? '1 fault' : `${n} faults`),
    fine: 'fine',
    fault: 'fault',
    withMe: (name: string) => `${name}: with me`,
    mark: (name: string, state: string) => `${name}: ${state}`
  },

  watch: {
    start: 'Start',
    markEnd: 'Mark end',
    startOver: 'Start over',
    goOn: 'It was no false start: run on',
    dropped: 'False start: nothing was added.',
    elapsed: 'Stopwatch',
    notKept: 'This browser keeps nothing: a reload would lose the running time. Do not close or reload the page.',
    elsewhere: (where: string) => `The stopwatch is running for ${where}.`,
    what: { run: 'a speed run', refill: 'the refill', jug: 'a jug' },
    stopIt: 'Give that time up',
    notCounted: (time: string, least: string, most: string) => `The stopwatch ran ${time}: only ${least} to ${most} counts, so nothing was added. Start again.`
  },

  speed: {
    intro: (course: string) => `${course}, back and forth. Tank half full, fan on, up to speed before the first mark.`,
    course: 'marked distance',
    courses: 'usual distances',
    next: (n: number, direction: string) => `run ${n}, ${direction}`,
    run: (n: number) => `run ${n}`,
    directions: { out: 'out', back: 'back' },
    turn: (n: number, direction: string) => `run ${n} goes ${direction}; turn it round`,
    typed: 'or type a time, s or min:s',
    typedAdd: 'Add run',
    typedBad: (text: string, range: string) => `time: “${text.slice(0, 12)}” is no time of ${range} s. Type seconds (62.4) or minutes and seconds (1:02.4).`,
    runs: 'Runs',
    none: 'No run yet. Two or three each way make a result.',
    most: 'This round holds 50 runs. Delete one first.',
    remove: (n: number) => `Delete run ${n}`,
    terms: 'How the runs are driven',
    yes: 'yes',
    no: 'no',
    display: 'tractor display shows',
    result: 'Forward speed',
    differs: (by: string) => `differs by ${by}`,
    before: (speed: string, round: number) => `${speed} of round ${round} still holds for this setting; time it again only if gear, tyres or ground have changed.`,
    noDirection: 'either way',
    answers: { speed: 'Mean speed', error: 'How sure', setting: 'Against the setting', display: 'The display', water: 'Water at this speed' },
    oneWay: (direction: string, speed: string) => `${direction} ${speed}`,
    water: (water: string) => `Water at this speed ${water},`,
    wanted: (water: string) => `wanted ${water}.`,
    byTables: 'By the nozzle tables: the output is not measured yet.',
    byOutput: 'With the output measured.',
    over: (distance: string) => `over ${distance}`
  },

  output: {
    intro: 'Clean water, working pressure, PTO at its speed. Read the pressure while it sprays.',
    method: 'How the output is measured',
    methods: { catch: 'One jug per nozzle', standing: 'Refill, on the spot', course: 'Refill, along a course' },
    total: 'All nozzles together',
    result: 'Output',
    caught: (n: number, all: number) => (n === all ? `All ${all} nozzles caught.` : `${n} of ${all} nozzles caught.`),
    sides: (left: string, right: string, off: string) => `Left ${left}, right ${right}: left against right ${off}.`,
    tables: (flow: string) => `By the nozzle tables ${flow}. Time the speed to know the water.`,
    water: (water: string) => `Water ${water},`,
    wanted: (water: string) => `wanted ${water}.`,
    longEnough: (closeness: string, long: string) => `For ±${closeness} spray at least ${long}.`,
    percent: (value: number) => `${value} %`,
    lasting: (min: number, s: number) => (min === 0 ? `${s} s` : s === 0 ? `${min} min` : `${min} min ${s} s`),
    answers: { output: 'Output', error: 'How sure', sides: 'Left against right', long: 'How long to spray', water: 'Water' }
  },

  refill: {
    intro: {
      standing: 'Level ground. Fill to a mark, spray on the spot, refill to the mark with a meter or a graduated jug.',
      course: 'Fill to a mark on level ground, spray along the marked course at working speed, refill to the mark there.'
    },
    title: 'spraying on the spot',
    start: 'Nozzles open: start',
    markEnd: 'Nozzles shut: end',
    seconds: 'time sprayed',
    distance: 'distance sprayed',
    litres: 'refilled to the mark',
    errors: 'How closely can you read it?',
    litresError: 'jug or meter, ±',
    secondsError: 'watch, ±'
  },

  catches: {
    intro: 'Fan off, a hose over each nozzle, one after the other. Enter goes on to the next.',
    seconds: 'jug held for',
    unit: 'jug reads in',
    sides: { left: 'Left, from the bottom', right: 'Right, from the bottom' },
    jug: (id: string, unit: string) => `jug of ${id}, ${unit}`,
    secondsOf: (id: string) => `${id} held for`,
    ownTime: (id: string, s: string) => `${id} held for ${s} s; own time`,
    verdicts: { fine: 'fine', low: 'low', high: 'high', unknown: 'unsure' }
  },

  plot: {
    caption: 'Bars: each nozzle against the mean of all. Shaded: within tolerance.',
    wear: 'against its table at the true pressure',
    missing: 'not caught',
    one: (id: string, off: string, verdict: string) => `${id} ${off} ${verdict}`,
    summary: (limit: number, outside: readonly string[]) =>
      `Each nozzle against the mean of all, tolerance ±${limit} %. ${outside.length === 0 ? 'None outside.' : `Outside: ${outside.join(', ')}.`} The figures stand beside each jug.`
  },

  gauges: {
    title: 'Pressure',
    intro: 'All while the nozzles spray, but the first. What you do not have, leave empty.',
    fields: { restBar: 'gauge, pump at rest', readBar: 'gauge, spraying', masterBar: 'second gauge beside it', farBar: 'gauge at far nozzle', oneSideBar: 'gauge, one side shut' },
    at: (pressure: string) => `Nozzles judged at ${pressure}:`,
    from: { far: 'read at the far nozzle.', master: 'read on the gauge known to be right.', gauge: 'read on the machine’s gauge, not proven right.', setting: 'as set; nothing was read.' },
    off: (by: string) => `Machine’s gauge against the right one: ${by}`,
    loss: (by: string, flow: string) => `Lost on the way to the far nozzle: ${by} of the pressure, ${flow} of its flow`,
    oneSide: (by: string) => `One side shut: ${by}`
  },

  law: {
    title: 'Does flow follow pressure? Test at two pressures',
    intro: 'The same nozzles at two pressures, at least half as much again. The exponent should be about one half.',
    fields: { firstBar: 'one pressure', firstLPerMin: 'flow at it', secondBar: 'other pressure', secondLPerMin: 'flow at that' }
  },

  tolerance: {
    title: 'Judged by',
    names: { strict: 'strict', normal: 'normal', inspection: 'inspection' } satisfies Record<ToleranceId, string>,
    limit: (value: string, certainty: string) => `±${value} % (${certainty})`,
    line: (mean: string, nominal: string, sides: string) => `to the mean ${mean}, to the table ${nominal}, left to right ${sides}`,
    note: 'No standard’s text was read for these. Each is yours to change under Result.'
  },

  result: {
    measured: 'Measured',
    wanted: 'wanted',
    verdicts: { within: 'within tolerance', 'bad-nozzles': 'litres right, nozzles not', adjust: 'adjust', 'other-nozzles': 'too far off', unknown: 'not known yet' },
    speedFrom: (speed: string, round: number) => `Speed ${speed}, round ${round}.`,
    noSpeedNeeded: 'The course gave the water itself.',
    flowFrom: (flow: string, how: string, round: number) => `Output ${flow} ${how}, round ${round}.`,
    by: { catches: 'by jugs', standing: 'by refill on the spot', course: 'by refill along a course' },
    computed: (volume: string, off: string) => `The setting says ${volume}: measured ${off}.`,
    width: (pattern: string, width: string, rate: string, per100: string) => `Way of driving: ${pattern}. One pass serves ${width}; the setting does ${rate} and ${per100}. If that is not how you drive, nothing above holds.`,
    remedies: (target: string) => `Three ways to ${target}`,
    firstReplace: (nozzles: string) => `Put right first: ${nozzles}. No pressure and no speed makes up for a bad nozzle.`,
    shortcutTitle: 'Why not pressure in proportion?',
    shortcut: (ratio: string, off: string) => `The flow has to change by × ${ratio}. Pressure changed by × ${ratio} would leave the flow off by ${off}, because flow goes with the square root of pressure: the pressure has to change by the square of it.`,
    trail: 'Rounds',
    again: 'Check again: new round',
    full: 'This check holds 50 rounds. Undo or clear some first.',
    nothing: 'Nothing found.',
    taken: 'Taken into the setting; a new round has begun.',
    prove: { size: 'Fit the nozzles, set the pressure, measure the output again.', speed: 'Change gear or engine speed, time it again.', pressure: 'Set the pressure with the nozzles open, measure the output again.' },
    toSpeed: 'Go to Speed',
    toOutput: 'Go to Output',
    answers: { volume: 'Measured water', error: 'How sure', speed: 'Forward speed', output: 'Output', wanted: 'Wanted water', off: 'Measured against wanted' }
  },

  remedies: {
    reach: { large: 'for large corrections', moderate: 'for moderate corrections', fine: 'for fine corrections' },
    suits: 'fits this gap',
    notPossible: 'Not possible:',
    water: 'water',
    droplets: 'drops',
    dropletsUnknown: 'not in the table',
    air: 'air per metre',
    same: 'as now',
    rate: 'work rate',
    use: 'Use and check again'
  },

  strip: {
    summary: (off: string, error: string, adjust: number, nozzles: number) => `Measured against wanted water: ${off}${error ? `, give or take ${error}` : ''}. Closer limit ±${adjust} %, wider limit ±${nozzles} %.`
  },

  trail: { round: 'round', begun: 'begun', off: 'off', verdict: 'verdict' },

  stale: {
    stale: 'The setting was changed since this test.',
    scaled: 'Other nozzles are open than in this test; all being alike, the flow is taken over by their count.',
    changed: (what: string) => `Changed: ${what}. What was measured stays with the setting that it was made with.`,
    again: 'New round with the present setting'
  }
} as const;
