import type { TickItem, ToleranceId } from '#core/check/types.ts';

/** One thing to look at: its name, how to look, and what a fault does to the result. */
interface ItemWords {
  readonly name: string;
  readonly how?: string;
  readonly fault?: string;
}

/** Labels of the first four steps on the headland, in English. */
export const checkScreen = {
  items: {
    clean: { name: 'Machine is clean', how: 'Tank, lines and outside rinsed.', fault: 'Dried residue breaks loose, clogs nozzles during the test, and gets on your hands.' },
    leaks: { name: 'No leaks', how: 'Pump running, hoses and fittings under pressure.', fault: 'A leak counts as output in the refill but never reaches a tree: the result reads too high.' },
    'nozzles-placed': { name: 'Right nozzles in the right places', how: 'Type, size and side as in the setting.', fault: 'Every figure below is worked out for nozzles that are not there; left and right may differ.' },
    filters: { name: 'Filters clean', how: 'Suction, pressure and nozzle filters.', fault: 'A blocked filter starves the nozzles behind it; the gauge may still look right.' },
    'nozzles-brushed': { name: 'Nozzles cleaned with a brush', how: 'Soft brush and water, never wire.', fault: 'Dirt makes a good nozzle look small; wire makes it large for good.' },
    drips: { name: 'No drips when shut', how: 'Watch each nozzle for a few seconds after shutting off.', fault: 'Shut nozzles that drip add output nobody aims, and more at every turn.' },
    'gauge-rest': { name: 'Gauge at zero at rest', how: 'Pump off, pressure let out.', fault: 'The gauge is off by that much at every pressure; flow follows the square root of it.' },
    'gauge-scale': { name: 'Gauge fits the pressure', how: 'Working pressure in the middle of the dial, fine divisions.', fault: 'On a coarse dial the needle hides a change that the nozzles feel.' },
    agitation: { name: 'Agitation works', how: 'Surface moving with the nozzles open.', fault: 'The first and the last part of a load differ in strength, whatever this check says of the volume.' },
    guards: { name: 'Guards on: shaft, fan, belts', how: 'Look with everything switched off.', fault: 'Do not start. Nothing here is worth a hand.' },
    pto: { name: 'PTO speed is right', how: 'By tachometer, at the engine speed used for spraying.', fault: 'Pump and fan turn at another speed than the setting says: output and air are both off.' },
    'water-only': { name: 'Clean water only in the tank', how: 'No product until the check is done.', fault: 'Product in the tank lands on you and on one spot of ground. Empty and rinse first.' },
    protection: { name: 'Protective equipment on', how: 'As the product label says; residue of earlier products is still in the machine.', fault: 'Do not start without what the label asks for.' },
    watch: { name: 'Stopwatch', how: 'Or the one here.' },
    tape: { name: 'Measuring tape and marks' },
    jug: { name: 'Graduated jug' },
    hoses: { name: 'Hoses to lead the spray into the jug' },
    gauge: { name: 'Second gauge, known to be right' },
    brush: { name: 'Soft brush, spare nozzles and filters' },
    ribbon: { name: 'Ribbon for the tree top' },
    paper: { name: 'Water-sensitive paper' },
    'half-tank': { name: 'Tank about half full', fault: 'Weight changes tyres and slip: time again with the load you spray with.' },
    'fan-on': { name: 'Fan and pump running', fault: 'The fan takes power: without it the tractor runs faster than it will spray.' },
    'in-alley': { name: 'In the alley, not on the road', fault: 'On firm ground the wheels slip less: the speed is not the one in the alley.' },
    'spraying-gear': { name: 'Spraying gear and engine speed', fault: 'Another gear is another speed: time again.' },
    'rolling-start': { name: 'Up to speed before the first mark', fault: 'A standing start makes the run slow: time again.' }
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
    tooLong: (time: string) => `The stopwatch ran ${time}: that is no run, so nothing was added. Start again.`,
    started: 'Stopwatch started.'
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
    differs: (by: string) => `differs from its mates by ${by}: drive it again, or say why and delete it`,
    noDirection: 'either way',
    answers: { speed: 'Mean speed', error: 'How sure', setting: 'Against the setting', display: 'The display', water: 'Water at this speed' },
    oneWay: (direction: string, speed: string) => `${direction} ${speed}`,
    reads: (shown: string, off: number, by: string) => (Math.abs(off) < 0.05 ? `Tractor shows ${shown}: it reads right.` : `Tractor shows ${shown}: it reads ${by.slice(1)} ${off > 0 ? 'high' : 'low'}.`),
    against: (speed: string, by: string) => `The setting says ${speed}: measured ${by}.`,
    water: (water: string) => `Water at this speed ${water}`,
    wanted: (water: string) => `wanted ${water}.`,
    byTables: 'By the nozzle tables: the output is not measured yet.',
    byOutput: 'With the output measured.',
    over: (distance: string) => `over ${distance}`
  },

  tolerances: {
    strict: 'strict',
    normal: 'normal',
    inspection: 'inspection'
  } satisfies Record<ToleranceId, string>
} as const;
