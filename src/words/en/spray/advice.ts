import type { Change } from '#core/spray/advice/types.ts';
import type { Part } from '../../language.ts';
import type { Template } from '../../words.ts';

/** What the search for settings finds and refuses. */
export const SPRAY_ADVICE: Part = {
  findings: {
    'spray-advice-ribbon-decides': 'This gives {off} less air than the alley rule wants, more than the {tolerance} that count as matched. Hang ribbons behind the row first: it holds only if they still move.',
    'spray-advice-ribbon-unruled': 'This gives less air than now, and there is no rule here to say whether it is enough. Hang ribbons behind the row first: it holds only if they still move.',
    'spray-advice-thinner-bottom': 'The lowest third of the crown gets {less} less of the dose. If the pest sits there, leave it.',
    'spray-advice-thinner-middle': 'The middle third of the crown gets {less} less of the dose. If the pest sits there, leave it.',
    'spray-advice-thinner-top': 'The top third of the crown gets {less} less of the dose. If the pest sits there, leave it.',
    'spray-advice-no-clear-difference': 'No clear difference to today’s setting: what it gains lies within what the model cannot tell.',
    'spray-advice-remix': 'Litres change from {from} to {to}: reckon the mix again, and keep to the water and the dose of the label.',
    'spray-advice-understated': 'What less air saves is understated here: published trials found far lower losses.',
    'spray-advice-check-pressure': 'The pump turns with the PTO: set the pressure to {pressure} again and look at the agitation.',
    'spray-advice-speed-unseen': 'The model sees no effect of travel speed. Each metre of row gets {air} less air: the ribbon decides.',
    'spray-advice-today-stands': 'Nothing within the machine’s limits is better in one thing without being worse in another. Today’s setting stands.',
    'spray-advice-holds-litres': 'This keeps the water where it has to be: {litres} after it.',
    'spray-advice-today-stopped': 'Today’s setting may not be used as it is: see the cautions. Plans keep the limits.',
    'spray-advice-none-clear': 'No setting that was found is clearly better than today’s.',
    'spray-advice-classes-unknown': 'A nozzle’s table prints no droplet classes: a usual hollow cone was taken for it. Enter the classes from its sheet.',
    'spray-advice-judges': 'This ranks settings; it is no recommendation. Ribbons, water-sensitive paper, the label and local rules decide.'
  },
  refusals: {
    'advice-cancelled': 'The search was stopped.',
    'advice-too-windy': 'It is too windy to spray: no setting is advised. Wait, as label and local rules say.',
    'advice-inversion': 'There are signs of an inversion, in which fine drops stay aloft: no setting is advised. Wait, as label and local rules say.',
    'advice-drops-dry': 'Drops dry too fast today: no setting is advised. Wait, as label and local rules say.',
    'advice-too-hot': 'It is too hot to spray: no setting is advised. Wait, as label and local rules say.',
    'advice-too-dry': 'The air is too dry to spray: no setting is advised. Wait, as label and local rules say.',
    'advice-below-label-water': 'The setting gives less water than the label wants, and nothing here may give more. Bring the water up to the label first.',
    'advice-stopped': 'A finding says stop, and no setting lifts it. Put that right first.'
  }
};

/** One change, as the subject of a sentence. */
export const CHANGES: Readonly<Record<Change['code'], Template>> = {
  shut: 'Shutting {nozzles}',
  open: 'Opening {nozzles}',
  swivel: 'Turning {nozzles} by {turn}',
  size: 'Fitting {to} for {from} in {nozzles} ({toClass} drops for {fromClass})',
  pressure: 'Setting {to} for {from}',
  gear: 'Taking fan gear {to} for {from}',
  pto: 'Setting the PTO to {to} for {from}',
  'gear-and-pto': 'Taking fan gear {to} at {rpm} for {from} at {fromRpm}',
  speed: 'Driving {to} for {from}'
};
/** A change of pressure that makes other drops. */
export const PRESSURE_DROPS: Template = ' ({toClass} drops for {fromClass})';

/** What it does, as the rest of the sentence. */
export const EFFECTS = {
  onTrees: { more: 'puts {share} more of what is sprayed on the trees', less: 'puts {share} less of what is sprayed on the trees' },
  lost: { more: 'loses {points} points less', less: 'loses {points} points more' },
  evenness: { more: 'spreads it more evenly', less: 'spreads it less evenly' },
  workRate: { more: 'raises the work rate by {share}', less: 'lowers the work rate by {share}' },
  none: 'makes no clear difference'
} as const satisfies Readonly<Record<string, { readonly more: Template; readonly less: Template } | Template>>;
