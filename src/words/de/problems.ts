import { whyNoFormula } from '../strategies/formula.ts';
import type { PROBLEM_SENTENCES as EN, ToldProblem } from '../en/problems.ts';

type P = Readonly<Record<string, number | string>>;
/** Was von einem Feld gesagt wird: nach seinem Namen, mit dem Wert, der dort steht. */
type Sentence = (p: P, value: string) => string;

const figure = (n: number | string | undefined): string => (typeof n === 'number' ? n.toLocaleString('de', { maximumSignificantDigits: 12 }) : String(n));
const UNITS: Readonly<Record<string, string>> = { '1': '', deg: '°', degC: '°C', 'm2/m3': 'm²/m³', 'm3/h': 'm³/h', 'gal/1000 ft3': 'US gal je 1000 ft³' };
const unitOf = (p: P): string => {
  const unit = UNITS[String(p['unit'])] ?? String(p['unit'] ?? '');
  return unit && ' ' + unit;
};
const span = (p: P): string => (p['least'] === undefined ? '' : `${figure(p['least'])} bis ${figure(p['most'])}${unitOf(p)}`);
const meant = (p: P): string => (p['nearest'] ? `War „${p['nearest']}“ gemeint?` : '');

/** Abhilfe nach Einheit: Die meisten unzulässigen Zahlen stehen in anderer Einheit oder mit verrutschtem Komma da. */
const CHECK_UNIT: Readonly<Record<string, string>> = {
  m: 'Das Komma prüfen, und dass der Wert in Metern steht: 1 ft sind 0,3048 m.',
  ft: 'Das Komma prüfen, und dass der Wert in Fuß steht: 1 m sind 3,28 ft.',
  bar: 'Das Komma prüfen, und dass der Wert in bar steht: 100 psi sind 6,9 bar.',
  'km/h': 'Das Komma prüfen, und dass der Wert in km/h steht: 1 mph sind 1,61 km/h.',
  'L/ha': 'Das Komma prüfen, und dass der Wert in Litern je Hektar steht: 1 US gal/acre sind 9,35 L/ha.',
  L: 'Das Komma prüfen, und dass der Wert in Litern steht: 1 US gal sind 3,79 L.',
  'L/min': 'Das Komma prüfen, und dass der Wert in Litern je Minute steht: 1 US gal/min sind 3,79 L/min.',
  'm3/h': 'Das Komma prüfen, und dass der Wert in Kubikmetern je Stunde steht: 1 cfm sind 1,70 m³/h.',
  degC: 'Prüfen, dass der Wert in Grad Celsius steht: 77 °F sind 25 °C.',
  'm/s': 'Prüfen, dass der Wert in Metern je Sekunde steht: 1 mph sind 0,447 m/s.',
  ha: 'Das Komma prüfen, und dass der Wert in Hektar steht: 1 acre sind 0,405 ha.',
  'm2/m3': 'Das Komma prüfen, und dass es die einseitige Blattfläche je Kronenvolumen ist.',
  'gal/1000 ft3': 'Das Komma prüfen, und dass der Wert in US-Gallonen je 1000 Kubikfuß steht.'
};
const checkUnit = (p: P): string => CHECK_UNIT[String(p['unit'])] ?? 'Das Komma prüfen und den Wert berichtigen.';

const KINDS: Readonly<Record<string, string>> = {
  number: 'eine Zahl',
  string: 'Text in Anführungszeichen',
  boolean: 'true oder false',
  object: 'ein Objekt { … }',
  array: 'eine Liste [ … ]'
};
const wanted = (p: P): string => {
  if (p['choices']) return `eines von: ${p['choices']}`;
  const kind = KINDS[String(p['wanted'])] ?? String(p['wanted']);
  return p['least'] === undefined ? kind : `${kind}, ${span(p)}`;
};

const REFERENCES: Readonly<Record<string, string>> = {
  machine: 'kein Gerät dieser Datei',
  label: 'keine Gebrauchsanleitung dieser Datei',
  gear: 'keine Gebläsestufe des Geräts',
  position: 'keine Düsenposition des Geräts',
  table: 'keine Düsentabelle dieser Datei',
  size: 'keine Größe der Düsentabelle',
  assumption: 'keine Annahme dieses Programms',
  rung: 'keine Stufe der Anlage',
  record: 'keine Aufzeichnung in der Datei oder unter den hier gespeicherten'
};

/** Sätze über ein Dokument oder eine Tabelle, nach Kennung: was dasteht, was zulässig ist, was zu tun ist. */
export const PROBLEM_SENTENCES: Partial<Readonly<Record<keyof typeof EN, Sentence>>> = {
  'too-large': (p) => `hat ${figure(p['length'])} Zeichen; gelesen werden höchstens ${figure(p['most'])}. Auf mehrere Dateien aufteilen.`,
  empty: () => 'ist leer; erwartet wird ein Dokument. Eine andere Datei wählen.',
  'not-json': (p, v) =>
    v
      ? `ist kein JSON: ${v} kann in Zeile ${p['line']}, Spalte ${p['column']} nicht stehen. Kurz davor nach einem fehlenden Komma, Anführungszeichen oder einer Klammer suchen.`
      : `ist kein JSON: Sie endet zu früh, in Zeile ${p['line']}, Spalte ${p['column']}. Die Datei ist vielleicht abgeschnitten; noch einmal speichern oder senden.`,
  'too-deep': (p) => `ist tiefer als ${p['most']} Ebenen verschachtelt; ein Dokument ist das nie. Diese Datei ist nicht von diesem Programm, oder sie ist beschädigt.`,
  'too-many-values': (p) => `enthält mehr als ${figure(p['most'])} Werte. Auf mehrere Dateien aufteilen.`,
  'duplicate-key': (p) => `steht zweimal im selben Objekt, noch einmal in Zeile ${p['line']}, Spalte ${p['column']}; ein Schlüssel darf einmal stehen. Einen davon behalten.`,
  'forbidden-key': (p) => `darf kein Schlüssel sein (Zeile ${p['line']}, Spalte ${p['column']}). Entfernen.`,
  'other-format': (p, v) => `ist ${v || 'nicht da'}; gelesen wird nur „${p['wanted']}“. Diese Datei wurde von einem anderen Programm oder für eines gemacht.`,
  'not-a-version': (p, v) => `ist ${v || 'nicht da'}; erwartet wird eine ganze Zahl von 1 bis ${p['newest']}. 1 schreiben, außer ein späteres Programm hat die Datei gemacht.`,
  'newer-version': (p, v) => `ist ${v}; dieses Programm liest Versionen bis ${p['newest']}. Die Datei stammt von einem neueren Programm: dieses aktualisieren.`,

  missing: (p) => `fehlt; nötig ist ${wanted(p)}. Hinzufügen.`,
  'wrong-type': (p, v) => `ist ${v}; nötig ist ${wanted(p)}. ${p['wanted'] === 'number' ? 'Die Zahl allein schreiben, ohne Anführungszeichen.' : 'Stattdessen das schreiben.'}`,
  'not-finite': (p, v) => `ist ${v}, zu groß für eine Zahl; zulässig ist ${span(p)}. ${checkUnit(p)}`,
  'out-of-range': (p, v) => `ist ${v}; zulässig ist ${span(p)}. ${checkUnit(p)}`,
  'not-whole': (p, v) => `ist ${v}; nötig ist eine ganze Zahl, ${span(p)}. Runden.`,
  'too-short': (p, v) => `ist ${v}; nötig ist mindestens ${p['bound']} Zeichen. Etwas schreiben.`,
  'too-long': (p, v) => `ist ${v}, ${figure(p['length'])} Zeichen; zulässig sind höchstens ${p['bound']}. Kürzen.`,
  'too-few': (p) => `hat ${p['length']} ${p['length'] === 1 ? 'Eintrag' : 'Einträge'}; mindestens ${p['bound']} müssen dastehen. Das Fehlende hinzufügen.`,
  'too-many': (p) => `hat ${figure(p['length'])} Einträge; zulässig sind höchstens ${p['bound']}. Auf mehrere aufteilen.`,
  'not-a-choice': (p, v) => `ist ${v}; zulässig sind: ${p['choices']}. ${meant(p) || 'Eines davon wählen.'}`,
  'unknown-key': (p) => `ist hier kein Feld; bekannt sind: ${p['known']}. ${meant(p) || 'Berichtigen oder entfernen.'}`,
  'not-an-id': (p, v) => `ist ${v}, das keine Kennung sein kann: 1 bis ${p['most']} Buchstaben, Ziffern, Punkte, Bindestriche oder Unterstriche, zuerst ein Buchstabe oder eine Ziffer. Umbenennen.`,
  'not-a-date': (_, v) => `ist ${v}; nötig ist ein Kalendertag in der Form 2031-04-27. So schreiben.`,
  'not-a-time': (_, v) => `ist ${v}; nötig ist eine Uhrzeit in der Form 07:30. So schreiben.`,
  'not-a-moment': (_, v) => `ist ${v || 'leer'}; nötig sind Tag und Uhrzeit in der Form 2031-04-27T07:30:00+02:00. So schreiben.`,
  'unfit-characters': (_, v) => `ist ${v}, mit Tabulatoren oder anderen Steuerzeichen, oder mit � für verlorene Zeichen; nötig ist einfacher Text. Diese entfernen, oder die Datei noch einmal als UTF-8 speichern.`,
  'not-plain-text': (_, v) => `ist ${v}, mit Zeilenumbrüchen oder Steuerzeichen; nötig ist einfacher Text in einer Zeile. Diese entfernen.`,

  'duplicate-id': (p, v) => `ist ${v}, das Eintrag ${p['first']} derselben Liste schon hat; jede Kennung steht einmal. Einen der beiden umbenennen.`,
  'same-place': (p) =>
    `steht in ${figure(p['heightM'])} m Höhe und ${figure(p['offsetM'])} m von der Mitte, wo schon Eintrag ${p['first']} derselben Liste steht; jeder Platz ist einmal vergeben. Einen der beiden verschieben oder entfernen.`,
  'reserved-id': (p, v) => `ist ${v}, die Kennung der eingebauten Tabelle; zulässig ist jede andere. Umbenennen, oder die Tabelle weglassen und die eingebaute nehmen.`,
  'no-such-reference': (p, v) =>
    `ist ${v}; das ist ${REFERENCES[String(p['kind'])] ?? `kein ${p['kind']}`}${p['within'] ? ` „${p['within']}“` : ''}; ` +
    (p['choices'] ? `vorhanden: ${p['choices']}. ${meant(p) || 'Eines davon wählen, oder hinzufügen.'}` : 'vorhanden ist nichts. Hinzufügen, oder dieses Feld weglassen.'),
  'not-rising': (p, v) => `ist ${v}, nicht über den ${figure(p['before'])} des Eintrags davor; nötig ist mehr als ${figure(p['before'])}. Die Einträge steigend ordnen.`,
  'least-above-most': (p, v) => `ist ${v}, über ${p['mostField']} mit ${figure(p['most'])}; höchstens das ist zulässig. Die beiden tauschen oder berichtigen.`,

  'bad-formula': (p, v) => `ist ${v} und lässt sich nicht berechnen. ${whyNoFormula(p)}`,

  'amends-itself': (_, v) => `ist ${v}, die eigene Kennung; eine Aufzeichnung berichtigt eine frühere. Die Aufzeichnung nennen, für die sie steht.`,
  'amends-in-circle': (_, v) => `ist ${v} und führt zu dieser Aufzeichnung zurück; Berichtigungen führen zu einer ersten Aufzeichnung zurück, die keine berichtigt. Eine davon ändern.`,
  'amends-other-kind': (p, v) => `ist ${v}, eine Aufzeichnung der Art ${p['other']}; eine der Art ${p['kind']} berichtigt eine ihrer eigenen Art. Eine andere nennen, oder eine neue Aufzeichnung anlegen.`,
  'amendment-without-reason': () => 'fehlt; eine Berichtigung sagt, warum sie gemacht wurde. Den Grund hinzufügen.',
  'reason-without-amendment': (_, v) => `ist ${v}, aber nichts wird berichtigt; ein Grund gehört zu einer Berichtigung. Die berichtigte Aufzeichnung nennen, oder den Grund entfernen.`,
  'other-content': (_, v) => `ist ${v}, eine Aufzeichnung, die schon hier ist und etwas anderes sagt; eine Aufzeichnung wird nie geändert. Weglassen, oder die Änderung als Berichtigung mit eigener Kennung bringen.`,

  'no-header': (p) => `hat keine Kopfzeile; die Namen der Spalten müssen in der ersten Zeile stehen. Hinzufügen: ${p['columns'] ?? 'block, row_spacing_m, tree_height_m, canopy_width_m'}.`,
  'no-rows': () => 'hat eine Kopfzeile und darunter keine Zeile. Eine Datei mit mindestens einem Tag wählen oder einen schreiben.',
  'unknown-column': (p, v) => `: „${v}“ ist keine bekannte Spalte; bekannt sind: ${p['known']}. ${meant(p) || 'Umbenennen, oder mit note_ beginnen lassen, dann wird sie übergangen.'}`,
  'duplicate-column': (_, v) => `: „${v}“ steht zweimal; jede Spalte steht einmal. Eine der beiden entfernen oder umbenennen.`,
  'two-units': (p) => `: ${p['columns']} nennen dieselbe Größe in zwei Einheiten; zulässig ist eine. Die andere entfernen.`,
  'missing-column': (p) => `fehlt; nötig ist eine von ${p['columns']}. In der Kopfzeile und in jeder Zeile hinzufügen.`,
  'field-count': (p) => `hat ${p['found']} Felder, die Kopfzeile ${p['wanted']}; nötig sind so viele wie in der Kopfzeile. Nach einem fehlenden oder überzähligen Trennzeichen suchen, oder nach einem Dezimalkomma in einer Datei mit Komma als Trennzeichen.`,
  absent: (p) => `ist leer; nötig ist ${p['choices'] ? `eines von ${p['choices']}` : p['least'] === undefined ? 'ein Name' : span(p)}. Ausfüllen, oder die Zeile entfernen.`,
  'not-a-number': (p, v) => `ist ${v}; nötig ist eine Zahl, ${span(p)}. Nur Ziffern schreiben, ohne Einheit.`,
  'skirt-not-below-top': (p, v) => `ist ${v || '0'}, aber ${p['heightColumn']} ist ${p['height']}; der Kronenansatz muss unter der Spitze liegen. Einen der beiden Werte berichtigen.`,
  'width-above-top': (p, v) => `ist ${v}, aber ${p['heightColumn']} ist ${p['height']}; über seiner Spitze hat ein Baum keine Breite. Die Zelle leeren, oder einen der beiden Werte berichtigen.`,
  'name-too-long': (p, v) => `ist ${v}, ${figure(p['length'])} Zeichen; zulässig sind höchstens ${p['most']}. Kürzen.`,
  'not-utf8': (_, v) => `ist ${v}, mit Bytes, die kein UTF-8-Text sind; jedes � steht für ein verlorenes Zeichen. Die Datei noch einmal als UTF-8 speichern.`,
  'bad-quotes': (_, v) => `(${v}) hat ein Anführungszeichen, das geöffnet und nicht geschlossen ist, oder Text nach einem schließenden; ein Feld in Anführungszeichen endet am zweiten. Schließen, und ein Anführungszeichen im Feld zweimal schreiben.`,
  'line-too-long': (p) => `ist länger als ${figure(p['most'])} Zeichen, das Höchste, was zulässig ist. Prüfen, ob die Datei eine Tabelle mit Zeilenumbrüchen ist.`,
  'not-parquet': () => 'ist keine Parquet-Datei: Sie beginnt nicht wie eine. Ist sie Text, den Namen auf .csv enden lassen; sonst noch einmal als Parquet speichern.',
  'cut-off': () => 'ist eine Parquet-Datei ohne Ende; sie ist vielleicht abgeschnitten. Noch einmal speichern oder senden.',
  damaged: (p) => `lässt sich nicht lesen${p['rows'] ? `, auch nicht die ${figure(p['rows'])} Zeilen ab dort` : ''}: ${p['why']}. Die Datei ist beschädigt oder auf eine Art geschrieben, die hier nicht bekannt ist; noch einmal schreiben.`,
  'column-type': (p, v) => `ist vom Typ ${v}; nötig sind ${p['wanted'] === 'name' ? 'Text oder ganze Zahlen' : 'Zahlen'}. Die Spalte noch einmal als ${p['wanted'] === 'name' ? 'Text' : 'DOUBLE'} schreiben.`,
  'too-many-lines': (p) => `und alle danach werden nicht gelesen; gelesen werden höchstens ${figure(p['most'])} Zeilen. Ausdünnen, oder die Datei aufteilen.`,
  'unclear-dates': (_, v) => `ist ${v}, und kein Datum der Datei sagt, ob Tag oder Monat zuerst kommt; eindeutig ist ein Kalendertag in der Form 2031-04-27. Die Daten so schreiben.`,
  'unit-unsaid': (_, v) => `: „${v}“ sagt nicht, in welcher Einheit; nötig ist ein Name, der auf _c oder _f endet. Umbenennen in temperature_c oder temperature_f.`,
  'moment-again': (_, v) => `ist ${v}, das eine frühere Zeile schon hat; jeder Zeitpunkt wird einmal gelesen. Eine der beiden entfernen.`,
  'min-above-max': (p, v) => `ist ${v}, über ${p['mostColumn']} mit ${p['most']}; der kleinste Wert ist höchstens der größte. Die beiden tauschen oder berichtigen.`
};

/** `/blocks/0/canopy/heightM` wie man es vorliest: blocks[0].canopy.heightM */
function fieldName(path: string): string {
  const steps = path.split('/').slice(1).map((s) => s.replaceAll('~1', '/').replaceAll('~0', '~'));
  return steps.map((s) => (/^\d+$/.test(s) ? `[${s}]` : `.${printable(s)}`)).join('').replace(/^\./, '');
}

/** Ein Schlüssel einer fremden Datei; was ein Terminal befolgen würde, wird sichtbar. */
const printable = (key: string): string =>
  (key.length > 60 ? key.slice(0, 59) + '…' : key).replace(/\p{C}/gu, (c) => '\\u' + (c.codePointAt(0) ?? 0).toString(16).padStart(4, '0'));

/** Wo etwas in einer Tabelle steht. */
export const placeInTable = (line: number, counted?: 'rows'): string => (line === 0 ? 'Die Datei' : `${counted ? 'Datensatz' : 'Zeile'} ${line}`);

/** Eine Schwierigkeit in ein, zwei Sätzen: die Stelle, was dasteht, was zulässig ist, Abhilfe. */
export const problemSentence = ({ code, path, line, counted, column, value, parameters }: ToldProblem): string => {
  const sentence = (PROBLEM_SENTENCES as Record<string, Sentence>)[code];
  const said = sentence ? sentence(parameters, value) : `wird abgelehnt (${code}).`;
  const place = line === undefined ? fieldName(path ?? '') || 'Die Datei' : placeInTable(line, counted) + (column && !said.startsWith(':') ? `, ${column}` : '');
  return said.startsWith(':') ? place + said : `${place} ${said}`;
};

/** Was auf eine gekürzte Liste folgt. */
export const moreProblems = (more: number): string => (more > 0 ? `Und ${figure(more)} weitere ${more === 1 ? 'Schwierigkeit' : 'Schwierigkeiten'}.` : '');
