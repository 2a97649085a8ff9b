import type { mixText as EN } from '../../en/headland/mix-text.ts';
import type { Translated } from '../../translation.ts';

/** Was der Schritt Füllungen sagt. */
export const mixText: Translated<typeof EN> = {
  areaFrom: { mix: 'wie für diese Behandlung eingegeben', block: 'der Anlage', rows: 'aus Reihen, ihrer Länge und ihrem Abstand' },
  volumeFrom: { check: 'wie am Vorgewende gemessen', setting: 'wie die Einstellung sagt, noch nicht gemessen' },
  groups: {
    conditioners: 'Wasserkonditionierer',
    'soluble-powders': 'wasserlösliches Pulver oder Granulat',
    'dry-powders': 'trockenes Pulver oder Granulat',
    'liquid-flowables': 'flüssige Suspension',
    emulsifiables: 'emulgierbar',
    solutions: 'Lösung',
    adjuvants: 'Zusatzstoff',
    unknown: 'Art nicht bekannt'
  },
  formulations: {
    WP: 'WP, wasserdispergierbares Pulver',
    WG: 'WG, wasserdispergierbares Granulat',
    DF: 'DF, trockenes fließfähiges Granulat',
    SG: 'SG, wasserlösliches Granulat',
    SP: 'SP, wasserlösliches Pulver',
    SC: 'SC, Suspensionskonzentrat',
    SE: 'SE, Suspoemulsion',
    F: 'F, fließfähige Suspension',
    ME: 'ME, Mikroemulsion',
    CS: 'CS, Kapselsuspension',
    EC: 'EC, Emulsionskonzentrat',
    EW: 'EW, Emulsion, Öl in Wasser',
    OD: 'OD, Öldispersion',
    SL: 'SL, wasserlösliches Konzentrat',
    adjuvant: 'Zusatzstoff',
    conditioner: 'Wasserkonditionierer',
    other: 'andere, nicht aufgeführt'
  },
  order: {
    water: (share) => `Wasser: mindestens ${share} davon vor dem ersten Mittel.`,
    agitate: 'Rührwerk an, und an lassen, bis der Behälter leer ist.',
    product: (name, group) => `${name} (${group}). Ganz auflösen oder verteilen lassen, bevor das nächste kommt.`,
    one: (name, group) => `${name} (${group}).`,
    'fill-up': 'Mit Wasser auf die Menge der Füllung auffüllen, dann fahren und ausbringen: eine Brühe nicht stehen lassen.'
  },
  labelFirst: 'Die Reihenfolge der Gebrauchsanleitungen geht vor; auf jeder danach sehen. Wo sie nichts sagen, in dieser Reihenfolge:',
  orderNotes: [
    'Reihenfolge nach Art des Mittels: North Dakota State University, 2021. Konditionierer zuerst, der Wasseranteil und Zusatzstoffe zuletzt sind gängige Praxis.',
    'Eine andere gebräuchliche Reihenfolge rührt nach den benetzbaren Mitteln und endet mit Netzmitteln; manche füllen den Behälter vor dem Mischen halb.',
    'Vor einer Mischung, die noch nie angesetzt wurde: eine Mischprobe im Glas mit demselben Wasser, und nachsehen, ob die Mischung erlaubt ist.'
  ],
  cautions: [
    'Der Umgang mit dem Konzentrat ist der riskanteste Schritt des Tages: Schutzausrüstung, wie jede Gebrauchsanleitung sagt, klares Wasser in Reichweite, niemand sonst in der Nähe.',
    'Aus einem Schlauch füllen, der nicht zurücksaugen kann. Einen Behälter, der sich füllt, nie verlassen.',
    'Auf einer Waage wiegen, im Becher messen: Verschlusskappen und Behälterskalen können um ein Zehntel falsch sein.'
  ],
  rinse: {
    tenfold: (water, residual) => `Mit ${water} spülen: das Zehnfache der ${residual}, die zurückbleiben.`,
    tenth: (water) => `Mit ${water} spülen: ein Zehntel des Behälters, da nicht bekannt ist, was zurückbleibt.`,
    left: (once, thrice) => `Auf einmal verwendet, bleiben ${once} der Konzentration; in drei Teilen, jeder ausgespritzt, ${thrice}.`,
    out: 'Die Spülflüssigkeit in der Kultur ausbringen, dünn und in Fahrt, wie Gebrauchsanleitung und örtliches Recht es zulassen; nie an einer Stelle oder in einen Abfluss.'
  },
  hours: (h, min) => (h === 0 ? `${min} min` : `${h} h ${min.padStart(2, '0')} min`)
};
