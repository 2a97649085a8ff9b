import type { SourceId } from '../sources/bibliography.ts';
import type { Certainty } from '../working/answer.ts';
import type { AnyFields, RecordKind } from './types.ts';

/** Who asks: always; only where the product's authorisation speaks of it; only where there is such a thing to tell. */
export const ASKED = ['always', 'where-authorised-so', 'if-any'] as const;
export type Asked = (typeof ASKED)[number];

/** One thing that is asked for; any one of the fields tells it. */
export interface Ask {
  readonly item: string;
  readonly fields: readonly string[];
  readonly when: Asked;
  readonly sources: readonly SourceId[];
  readonly certainty: Certainty;
}

/** What else is said about keeping such records: a code for the words and its numbers. */
export interface RuleNote {
  readonly code: string;
  readonly parameters: Readonly<Record<string, number>>;
  readonly sources: readonly SourceId[];
  readonly certainty: Certainty;
}

/** What one set of rules asks of one kind of record, as we understand it from summaries. A help to remember, never a proof of anything. */
export interface RuleSet {
  readonly kind: RecordKind;
  readonly asks: readonly Ask[];
  readonly notes: readonly RuleNote[];
}

const from =
  (certainty: Certainty, ...sources: readonly SourceId[]) =>
  (item: string, fields: readonly string[] = [item], when: Asked = 'always'): Ask => ({ item, fields, when, sources, certainty });
const note = (code: string, certainty: Certainty, sources: readonly SourceId[], parameters: Readonly<Record<string, number>> = {}): RuleNote => ({ code, parameters, sources, certainty });

const DOSE = ['productKgPerHa', 'productLPerHa'];
const TOTAL = ['productTotalKg', 'productTotalL'];

const both = from('published', 'eu-2023-564', 'eu-1107-2009');
const eu = from('published', 'eu-2023-564');
const restricted = from('published', 'us-7-cfr-110-3');
const commercial = from('published', 'us-40-cfr-171-303');
const display = from('published', 'us-40-cfr-170');
const scheme = from('published', 'private-standards');
const remembered = from('memory', 'habit');

const US_RESTRICTED: readonly Ask[] = [
  restricted('productName'),
  restricted('epaRegNumber'),
  restricted('total', TOTAL),
  restricted('location'),
  restricted('treatedAreaHa'),
  restricted('crop'),
  restricted('date'),
  restricted('certifiedApplicator'),
  restricted('certificateNumber')
];
/** The same for both kinds of US record. */
const US_NOTES: readonly RuleNote[] = [
  note('keep-years', 'published', ['idaho-agriculture'], { years: 2 }),
  note('write-within-days', 'memory', ['us-7-cfr-110-3'], { days: 14 }),
  note('product-not-mix', 'practice', ['habit']),
  note('area-in-label-units', 'practice', ['habit']),
  note('whole-block-treated', 'practice', ['habit'])
];

export const RULE_SETS = {
  eu: {
    kind: 'treatment',
    asks: [
      both('productName'),
      eu('authorisationNumber'),
      both('date'),
      eu('startTime', ['startTime'], 'where-authorised-so'),
      both('dose', DOSE),
      both('crop'),
      eu('cropEppo'),
      eu('bbch', ['bbch'], 'where-authorised-so'),
      both('treatedAreaHa'),
      eu('geoUnit'),
      eu('typeOfUse')
    ],
    notes: [
      note('electronic-from', 'published', ['eu-2023-564'], { year: 2026 }),
      note('paper-within-days', 'published', ['eu-2023-564'], { days: 30 }),
      note('member-states-differ', 'published', ['eu-2023-564'], { germany: 2027 }),
      note('keep-years', 'memory', ['eu-1107-2009'], { years: 3 })
    ]
  },
  'us-restricted': { kind: 'treatment', asks: US_RESTRICTED, notes: US_NOTES },
  'us-commercial': {
    kind: 'treatment',
    asks: [
      ...US_RESTRICTED,
      commercial('customerName'),
      commercial('customerAddress'),
      commercial('startTime'),
      commercial('nonCertifiedApplicator', ['nonCertifiedApplicator'], 'if-any')
    ],
    notes: [note('keep-years', 'published', ['us-40-cfr-171-303'], { years: 2 }), ...US_NOTES.slice(1)]
  },
  'us-worker-display': {
    kind: 'treatment',
    asks: [display('location'), display('productName'), display('epaRegNumber'), display('activeIngredients'), display('date'), display('startTime'), display('reEntryHours')],
    notes: [note('display-days', 'published', ['us-40-cfr-170'], { days: 30 }), note('keep-years', 'memory', ['us-40-cfr-170'], { years: 2 })]
  },
  'private-standard': {
    kind: 'treatment',
    asks: [
      scheme('crop'),
      scheme('variety'),
      scheme('blockName'),
      scheme('date'),
      scheme('endTime'),
      scheme('productName'),
      scheme('activeIngredients'),
      scheme('preHarvestIntervalDays')
    ],
    notes: [note('output-recorded', 'practice', ['habit'])]
  },
  calibration: {
    kind: 'calibration',
    asks: [
      remembered('date'),
      remembered('operator'),
      remembered('machine'),
      remembered('tractor'),
      remembered('tractorGear'),
      remembered('engineRpm'),
      remembered('ptoRpm'),
      remembered('tyre'),
      remembered('fanGear'),
      remembered('fanBlade', ['fanBlade'], 'if-any'),
      remembered('speedRuns'),
      remembered('speedKmH'),
      remembered('rowSpacingM'),
      remembered('pattern'),
      remembered('nozzles'),
      remembered('gaugeBar'),
      remembered('farGaugeBar'),
      remembered('rawOutput', ['catches', 'refillL']),
      remembered('meanNozzleLPerMin', ['meanNozzleLPerMin'], 'if-any'),
      remembered('deviations', ['deviations'], 'if-any'),
      remembered('sides', ['leftLPerMin', 'rightLPerMin'], 'if-any'),
      remembered('flowLPerMin'),
      remembered('wantedLPerHa'),
      remembered('volumeLPerHa'),
      remembered('offWantedPct'),
      remembered('action', ['action'], 'if-any'),
      remembered('weather', ['temperatureC', 'humidityPct', 'windMPerS']),
      remembered('paperCheck', ['paperCheck'], 'if-any'),
      remembered('nextDue')
    ],
    notes: [note('output-recorded', 'practice', ['habit'])]
  }
} as const satisfies Record<string, RuleSet>;

export type RuleSetId = keyof typeof RULE_SETS;
/** Those that the user may choose. The list for calibrations comes with every calibration. */
export const CHOSEN_RULES = ['eu', 'us-restricted', 'us-commercial', 'us-worker-display', 'private-standard'] as const satisfies readonly RuleSetId[];
export type ChosenRules = (typeof CHOSEN_RULES)[number];

export interface CheckedAsk {
  readonly ask: Ask;
  readonly there: boolean;
}

/** What a set of rules asks for, and whether the fields tell it. */
export const checklist = (rules: RuleSetId, fields: AnyFields): readonly CheckedAsk[] =>
  RULE_SETS[rules].asks.map((ask) => ({ ask, there: ask.fields.some((f) => fields[f] !== undefined) }));

/** The sets that speak of a kind of record: of a calibration the one there is, of a treatment those that were chosen. */
export const rulesFor = (kind: RecordKind, chosen: readonly ChosenRules[]): readonly RuleSetId[] => (kind === 'calibration' ? ['calibration'] : chosen);
