import type { Template } from '../../words.ts';

/** Warum sich zwei Dosisindizes unterscheiden, nach der Kennung der Rechnung; siehe das englische Gegenstück. */
export const REASON_TEMPLATES: Readonly<Record<string, { readonly one: Template; readonly both: Template }>> = {
  reference: {
    one: 'An der Bezugskrone von {trv} gibt „{a}“ {shareA} der Dosis, „{b}“ {shareB}',
    both: 'An der Bezugskrone von {trv} gibt „{a}“ {shareA} der Dosis, „{b}“ {shareB}'
  },
  law: { one: '„{one}“ ist eine Gerade, die {least} der Dosis behält, wo nichts steht; gegenüber einer proportionalen macht das', both: '„{a}“ und „{b}“ sind Geraden, die verschiedene Anteile der Dosis behalten, wo nichts steht' },
  spacing: { one: '„{one}“ zählt den Reihenabstand, hier {to} und beim Bezug {from}; „{other}“ nicht', both: '„{a}“ und „{b}“ zählen den Reihenabstand verschieden, hier {to} und beim Bezug {from}' },
  height: { one: '„{one}“ zählt die Kronenhöhe, hier {to} und beim Bezug {from}; „{other}“ nicht', both: '„{a}“ und „{b}“ zählen die Kronenhöhe verschieden, hier {to} und beim Bezug {from}' },
  skirt: { one: '„{one}“ nimmt die Höhe vom Boden an, „{other}“ zählt die {to} unter dem Kronenansatz nicht', both: '„{a}“ und „{b}“ zählen die {to} unter dem Kronenansatz verschieden' },
  width: { one: '„{one}“ zählt die Breite, hier {to} und beim Bezug {from}; „{other}“ nicht', both: '„{a}“ und „{b}“ zählen die Breite verschieden, hier {to} und beim Bezug {from}' },
  outline: { one: '„{one}“ zählt, was im Umriss ist, „{other}“ den Quader darum oder gar keine Breite', both: '„{a}“ und „{b}“ zählen den Umriss verschieden' },
  gaps: { one: '„{one}“ lässt Lücken weg, {to} der Reihe sind gefüllt; „{other}“ nicht', both: '„{a}“ und „{b}“ zählen Lücken verschieden' },
  faces: { one: '„{one}“ zählt die behandelten Reihenseiten, „{other}“ nicht', both: '„{a}“ und „{b}“ zählen die behandelten Reihenseiten verschieden' },
  density: { one: '„{one}“ zählt, wie dicht die Krone steht, „{other}“ nicht', both: '„{a}“ und „{b}“ zählen nach verschiedenen Skalen, wie dicht die Krone steht' },
  stage: { one: '„{one}“ zählt das Entwicklungsstadium, „{other}“ nicht', both: '„{a}“ und „{b}“ zählen das Entwicklungsstadium verschieden' }
};

/** Hinter dem Grund: was er ausmacht. */
export const REASON_EFFECTS = {
  more: ': {share} mehr nach „{a}“.',
  less: ': {share} weniger nach „{a}“.',
  unknown: '. Was es ausmacht, lässt sich einzeln nicht sagen.'
} as const;
