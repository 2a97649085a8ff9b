import type { Change } from '#core/spray/advice/types.ts';
import type { Part } from '../../language.ts';
import type { Template } from '../../words.ts';

/** Was die Suche nach Einstellungen findet und ablehnt. */
export const SPRAY_ADVICE: Part = {
  findings: {
    'spray-advice-ribbon-decides': 'Das gibt {off} weniger Luft, als die Fahrgassenregel will, mehr als die {tolerance}, die als passend gelten. Zuerst Bändchen hinter die Reihe hängen: Es gilt nur, wenn sie sich noch bewegen.',
    'spray-advice-ribbon-unruled': 'Das gibt weniger Luft als jetzt, und hier gibt es keine Regel, die sagt, ob es genug ist. Zuerst Bändchen hinter die Reihe hängen: Es gilt nur, wenn sie sich noch bewegen.',
    'spray-advice-thinner-bottom': 'Das unterste Drittel der Krone bekommt {less} weniger von der Dosis. Sitzt der Schaderreger dort, es lassen.',
    'spray-advice-thinner-middle': 'Das mittlere Drittel der Krone bekommt {less} weniger von der Dosis. Sitzt der Schaderreger dort, es lassen.',
    'spray-advice-thinner-top': 'Das oberste Drittel der Krone bekommt {less} weniger von der Dosis. Sitzt der Schaderreger dort, es lassen.',
    'spray-advice-no-clear-difference': 'Kein klarer Unterschied zur heutigen Einstellung: Der Gewinn liegt in dem, was das Modell nicht sagen kann.',
    'spray-advice-remix': 'Die Liter ändern sich von {from} auf {to}: die Brühe neu berechnen, und Wasser und Dosis der Gebrauchsanleitung einhalten.',
    'spray-advice-understated': 'Was weniger Luft spart, ist hier zu gering dargestellt: Veröffentlichte Versuche fanden weit geringere Verluste.',
    'spray-advice-check-pressure': 'Die Pumpe dreht mit der Zapfwelle: den Druck wieder auf {pressure} einstellen und nach dem Rührwerk sehen.',
    'spray-advice-speed-unseen': 'Das Modell sieht keine Wirkung der Fahrgeschwindigkeit. Jeder Meter Reihe bekommt {air} weniger Luft: Das Bändchen entscheidet.',
    'spray-advice-today-stands': 'Nichts in den Grenzen des Geräts ist in einem besser, ohne in anderem schlechter zu sein. Die heutige Einstellung bleibt.',
    'spray-advice-holds-litres': 'Das hält das Wasser, wo es sein muss: danach {litres}.',
    'spray-advice-today-stopped': 'Die heutige Einstellung darf so nicht verwendet werden: siehe die Warnungen. Die Vorschläge halten die Grenzen ein.',
    'spray-advice-none-clear': 'Keine gefundene Einstellung ist klar besser als die heutige.',
    'spray-advice-classes-unknown': 'Die Tabelle einer Düse nennt keine Tropfengrößenklassen: Dafür wurde eine übliche Hohlkegeldüse genommen. Die Klassen aus ihrem Datenblatt eingeben.',
    'spray-advice-judges': 'Das ordnet Einstellungen; es ist keine Empfehlung. Bändchen, wassersensitives Papier, Gebrauchsanleitung und örtliche Vorschriften entscheiden.'
  },
  refusals: {
    'advice-cancelled': 'Die Suche wurde angehalten.',
    'advice-too-windy': 'Es ist zu windig zum Ausbringen: Keine Einstellung wird geraten. Warten, wie Gebrauchsanleitung und örtliche Vorschriften sagen.',
    'advice-inversion': 'Es gibt Anzeichen einer Inversion, in der feine Tropfen in der Schwebe bleiben: Keine Einstellung wird geraten. Warten, wie Gebrauchsanleitung und örtliche Vorschriften sagen.',
    'advice-drops-dry': 'Die Tropfen trocknen heute zu schnell: Keine Einstellung wird geraten. Warten, wie Gebrauchsanleitung und örtliche Vorschriften sagen.',
    'advice-too-hot': 'Es ist zu heiß zum Ausbringen: Keine Einstellung wird geraten. Warten, wie Gebrauchsanleitung und örtliche Vorschriften sagen.',
    'advice-too-dry': 'Die Luft ist zu trocken zum Ausbringen: Keine Einstellung wird geraten. Warten, wie Gebrauchsanleitung und örtliche Vorschriften sagen.',
    'advice-below-label-water': 'Die Einstellung gibt weniger Wasser, als die Gebrauchsanleitung will, und nichts hier darf mehr geben. Zuerst das Wasser auf die Gebrauchsanleitung bringen.',
    'advice-stopped': 'Ein Befund sagt Stopp, und keine Einstellung hebt ihn auf. Zuerst das in Ordnung bringen.'
  }
};

/** Eine Änderung, als Subjekt eines Satzes. */
export const CHANGES: Readonly<Record<Change['code'], Template>> = {
  shut: '{nozzles} zu schließen',
  open: '{nozzles} zu öffnen',
  swivel: '{nozzles} um {turn} zu schwenken',
  size: 'In {nozzles} {to} statt {from} einzubauen (Tropfen {toClass} statt {fromClass})',
  pressure: '{to} statt {from} einzustellen',
  gear: 'Gebläsestufe {to} statt {from} zu nehmen',
  pto: 'Die Zapfwelle auf {to} statt {from} zu stellen',
  'gear-and-pto': 'Gebläsestufe {to} bei {rpm} statt {from} bei {fromRpm} zu nehmen',
  speed: '{to} statt {from} zu fahren'
};
/** Eine Änderung des Drucks, die andere Tropfen macht. */
export const PRESSURE_DROPS: Template = ' (Tropfen {toClass} statt {fromClass})';

/** Was sie bewirkt, als Rest des Satzes. */
export const EFFECTS = {
  onTrees: { more: 'bringt {share} mehr vom Ausgebrachten auf die Bäume', less: 'bringt {share} weniger vom Ausgebrachten auf die Bäume' },
  lost: { more: 'verliert {points} Punkte weniger', less: 'verliert {points} Punkte mehr' },
  evenness: { more: 'verteilt es gleichmäßiger', less: 'verteilt es weniger gleichmäßig' },
  workRate: { more: 'erhöht die Flächenleistung um {share}', less: 'senkt die Flächenleistung um {share}' },
  none: 'macht keinen klaren Unterschied'
} as const satisfies Readonly<Record<string, { readonly more: Template; readonly less: Template } | Template>>;
