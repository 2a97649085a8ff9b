import type { Part } from '../../language.ts';

/** What is said of a fitting of nozzles. */
export const FITTING: Part = {
  findings: {
    'fitting-position-off': '{nozzles} {nozzles#is|are} more than {tolerance} from the target; the farthest is {worst} by {off}. Catch {nozzles#it|these} first on the headland.',
    'fitting-other-speed': 'No pressure brings these sizes to the target at {present}: drive {speed}. The air per metre of row changes with it.',
    'fitting-nothing-wanted': '{nozzles} {nozzles#takes|take} {share} of the flow where nothing is wanted. Shut {nozzles#it|them} first, then fit again.',
    'fitting-rule-upper-large': 'For large trees a published rule wants 65 to 80 % through the upper half of the open nozzles; here it is {share}. The weights were followed, not the rule.',
    'fitting-rule-upper-low-machine': 'For low machines in trees of 6 to 7.6 m a published rule wants about 70 % from the top positions; here it is {share}. The weights were followed, not the rule.',
    'fitting-rule-two-thirds': 'A rule from memory wants two thirds through the upper half of the open nozzles; here it is {share}. The weights were followed, not the rule.',
    'fitting-rule-middle-heavy': 'For citrus a published rule wants the largest nozzles in the middle of the arc; here they are not. The weights were followed, not the rule.',
    'fitting-rule-proportional': 'For towers beside a wall of leaf a rule from memory expects 50 to 60 % through the upper half of the open nozzles; here it is {share}. The weights were followed, not the rule.',
    'fitting-sides-unlike': 'The nozzles as they are differ left and right, so they are not in the list. Drop “left and right alike” to keep them.',
    'fitting-present-unfit': 'The nozzles as they are cannot reach the target: at {speed} they would need {pressure}, and no other allowed speed helps.'
  },
  refusals: {
    'no-own-weight': 'No open position has a weight. Give at least one of them a weight above zero.',
    'no-leaf-before-nozzles': 'No open nozzle meets leaf, so the canopy gives no weights. Open those that face leaf, or weigh the positions yourself.',
    'nothing-wanted-here': 'Nothing is wanted of {position}.',
    'fitting-speed-apart': 'The wanted speeds and the machine’s have nothing in common: at least {least}, at most {most}. Widen the wish.',
    'fitting-pressure-apart': 'The wanted pressures and the machine’s have nothing in common: at least {least}, at most {most}. Widen the wish.',
    'fitting-no-size': 'A position has no size to choose from. Add sizes that may be fitted.',
    'fitting-class-unknown': 'Table “{table}” prints no droplet classes, so a wish for one cannot be kept. Enter them from the nozzle’s sheet, or drop the wish.',
    'fitting-class-unmet': 'No size makes the wanted droplet classes at an allowed pressure. Widen the classes, the pressures or the sizes.',
    'fitting-pressure-tables': 'Allowed are {least} to {most}, but the nozzle tables work from {tableLeast} to {tableMost}. Widen the pressures or choose another table.',
    'fitting-too-little': 'The largest sizes at the highest pressure and the lowest speed give {most}; wanted are {target}. Add larger sizes, allow more pressure or a lower speed, or want less.',
    'fitting-too-much': 'The smallest sizes at the lowest pressure and the highest speed still give {least}; wanted are {target}. Add smaller sizes, allow less pressure or a higher speed, shut nozzles, or want more.',
    'fitting-changes-bind': 'With at most {changes} nozzles changed nothing reaches the target. Allow more changes, or widen pressure or speed.',
    'fitting-none': 'No combination of these sizes reaches the target within the limits. Add sizes, or widen pressure or speed.',
    'fitting-cancelled': 'The search was stopped.'
  },
  fields: { 'fitting.targetLPerHa': 'volume to fit to' },
  formulas: {
    'target-flow': 'Target of one position',
    'off-target': 'Distance from the target',
    'profile-match': 'Profile match',
    'top-share': 'Share through the upper half'
  },
  symbols: {
    qw: 'flow wanted here',
    'target-flow.w': 'weight of the position',
    'target-flow.Q': 'wanted flow',
    'off-target.d': 'off target by',
    'profile-match.M': 'profile match',
    'profile-match.e': 'sum of the differences between shares and weights',
    St: 'share through the upper half',
    qt: 'flow through the upper half'
  },
  assumptions: {
    'fitting.position-tolerance': { label: 'Position off target', meaning: 'A nozzle farther than this from its target is named. In use when sizes are chosen from a catalogue.' },
    'fitting.few-gain': { label: 'Few changes bring', meaning: '“Few changes” is the fitting with the fewest changes that brings this share of what the best match gains.' }
  }
};
