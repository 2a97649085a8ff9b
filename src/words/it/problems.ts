import type { ToldProblem } from '../en/problems.ts';
import { whyNoFormula } from '../strategies/formula.ts';

type P = Readonly<Record<string, number | string>>;
/** What is said of a field: after its name, `said` with the value that stands there. */
type Sentence = (p: P, value: string) => string;

/** 12345.6 → 12 345,6 */
const figure = (n: number | string | undefined): string =>
  typeof n === 'number' ? n.toLocaleString('en', { maximumSignificantDigits: 12 }).replaceAll(',', '\u202f').replace('.', ',') : String(n);
const UNITS: Readonly<Record<string, string>> = { '1': '', deg: '°', degC: '°C', 'm2/m3': 'm²/m³', 'm3/h': 'm³/h', 'gal/1000 ft3': 'US gal per 1000 ft³' };
const unitOf = (p: P): string => {
  const unit = UNITS[String(p['unit'])] ?? String(p['unit'] ?? '');
  return unit && ' ' + unit;
};
const span = (p: P): string => (p['least'] === undefined ? '' : `da ${figure(p['least'])} a ${figure(p['most'])}${unitOf(p)}`);
const meant = (p: P): string => (p['nearest'] ? `Si intendeva «${p['nearest']}»?` : '');

/** Remedies by unit: most numbers out of range were written in another unit, or with a slipped decimal point. */
const CHECK_UNIT: Readonly<Record<string, string>> = {
  m: 'Verificare la virgola decimale e che sia in metri: 1 ft è 0,3048 m.',
  ft: 'Verificare la virgola decimale e che sia in piedi: 1 m è 3,28 ft.',
  bar: 'Verificare la virgola decimale e che sia in bar: 100 psi sono 6,9 bar.',
  'km/h': 'Verificare la virgola decimale e che sia in km/h: 1 mph è 1,61 km/h.',
  'L/ha': 'Verificare la virgola decimale e che sia in litri per ettaro: 1 US gal/acre è 9,35 L/ha.',
  L: 'Verificare la virgola decimale e che sia in litri: 1 US gal è 3,79 L.',
  'L/min': 'Verificare la virgola decimale e che sia in litri al minuto: 1 US gal/min è 3,79 L/min.',
  'm3/h': 'Verificare la virgola decimale e che sia in metri cubi all’ora: 1 cfm è 1,70 m³/h.',
  degC: 'Verificare che sia in gradi Celsius: 77 °F sono 25 °C.',
  'm/s': 'Verificare che sia in metri al secondo: 1 mph è 0,447 m/s.',
  ha: 'Verificare la virgola decimale e che sia in ettari: 1 acre è 0,405 ha.',
  'm2/m3': 'Verificare la virgola decimale e che sia l’area fogliare di un lato per volume di chioma.',
  'gal/1000 ft3': 'Verificare la virgola decimale e che sia in galloni USA per 1000 piedi cubi.'
};
const checkUnit = (p: P): string => CHECK_UNIT[String(p['unit'])] ?? 'Verificare la virgola decimale e correggere.';

const KINDS: Readonly<Record<string, string>> = {
  number: 'un numero',
  string: 'un testo tra virgolette',
  boolean: 'true o false',
  object: 'un oggetto { … }',
  array: 'un elenco [ … ]'
};
const wanted = (p: P): string => {
  if (p['choices']) return `uno di questi: ${p['choices']}`;
  const kind = KINDS[String(p['wanted'])] ?? String(p['wanted']);
  return p['least'] === undefined ? kind : `${kind}, ${span(p)}`;
};

const REFERENCES: Readonly<Record<string, string>> = {
  machine: 'nessuna macchina di questo file',
  label: 'nessuna etichetta di questo file',
  gear: 'nessuna marcia della macchina',
  position: 'nessuna posizione degli ugelli della macchina',
  table: 'nessuna tabella degli ugelli di questo file',
  size: 'nessuna misura della tabella degli ugelli',
  assumption: 'nessuna ipotesi di questo programma',
  rung: 'nessuna tappa dell’appezzamento',
  record: 'nessuna registrazione nel file o tra quelle conservate qui'
};

/** Sentences about a document or a table, by code: what stands there, what is allowed, what to do. */
export const PROBLEM_SENTENCES = {
  'too-large': (p) => `ha ${figure(p['length'])} caratteri; se ne leggono al massimo ${figure(p['most'])}. Dividere in più file.`,
  empty: () => 'è vuoto; si attende un documento. Scegliere un altro file.',
  'not-json': (p, v) =>
    v
      ? `non è JSON: ${v} non può stare alla riga ${p['line']}, colonna ${p['column']}. Cercare subito prima una virgola, delle virgolette o una parentesi mancanti.`
      : `non è JSON: finisce troppo presto, alla riga ${p['line']}, colonna ${p['column']}. Il file può essere troncato; salvarlo o inviarlo di nuovo.`,
  'too-deep': (p) => `è annidato oltre ${p['most']} livelli; un documento non lo è mai. Non è un file di questo programma, oppure è danneggiato.`,
  'too-many-values': (p) => `contiene più di ${figure(p['most'])} valori. Dividere in più file.`,
  'duplicate-key': (p) => `compare due volte nello stesso oggetto, la seconda alla riga ${p['line']}, colonna ${p['column']}; una chiave può comparire una volta. Tenerne una.`,
  'forbidden-key': (p) => `non può essere usato come chiave (riga ${p['line']}, colonna ${p['column']}). Toglierlo.`,
  'other-format': (p, v) => `${v ? `è ${v}` : 'non c’è'}; si legge solo «${p['wanted']}». Questo file è stato fatto da un altro programma o per un altro programma.`,
  'not-a-version': (p, v) => `${v ? `è ${v}` : 'non c’è'}; si attende un numero intero da 1 a ${p['newest']}. Scrivere 1, salvo che il file sia di un programma successivo.`,
  'newer-version': (p, v) => `è ${v}; questo programma legge versioni fino a ${p['newest']}. Il file è stato fatto da un programma più nuovo: aggiornare questo.`,

  missing: (p) => `manca; serve ${wanted(p)}. Aggiungerlo.`,
  'wrong-type': (p, v) => `è ${v}; serve ${wanted(p)}. ${p['wanted'] === 'number' ? 'Scrivere solo la cifra, senza virgolette.' : 'Scrivere quello al suo posto.'}`,
  'not-finite': (p, v) => `è ${v}, troppo grande per essere un numero; è ammesso ${span(p)}. ${checkUnit(p)}`,
  'out-of-range': (p, v) => `è ${v}; è ammesso ${span(p)}. ${checkUnit(p)}`,
  'not-whole': (p, v) => `è ${v}; serve un numero intero, ${span(p)}. Arrotondarlo.`,
  'too-short': (p, v) => `è ${v}; serve almeno ${p['bound']} carattere. Scrivere qualcosa.`,
  'too-long': (p, v) => `è ${v}, ${figure(p['length'])} caratteri; ne sono ammessi al massimo ${p['bound']}. Accorciarlo.`,
  'too-few': (p) => `ha ${p['length']} ${p['length'] === 1 ? 'voce' : 'voci'}; ne servono almeno ${p['bound']}. Aggiungere ciò che manca.`,
  'too-many': (p) => `ha ${figure(p['length'])} voci; ne sono ammesse al massimo ${p['bound']}. Dividere in più parti.`,
  'not-a-choice': (p, v) => `è ${v}; sono ammessi: ${p['choices']}. ${meant(p) || 'Sceglierne uno.'}`,
  'unknown-key': (p) => `non è un campo qui; sono noti: ${p['known']}. ${meant(p) || 'Correggerlo o toglierlo.'}`,
  'not-an-id': (p, v) => `è ${v}, che non può essere un id: da 1 a ${p['most']} lettere, cifre, punti, trattini o trattini bassi, con una lettera o una cifra all’inizio. Cambiarlo.`,
  'not-a-date': (_, v) => `è ${v}; serve un giorno di calendario scritto come 2031-04-27. Scriverlo così.`,
  'not-a-time': (_, v) => `è ${v}; serve un’ora del giorno scritta come 07:30. Scriverla così.`,
  'not-a-moment': (_, v) => `è ${v || 'vuoto'}; servono giorno e ora scritti come 2031-04-27T07:30:00+02:00. Scriverli così.`,
  'unfit-characters': (_, v) => `è ${v}, con tabulazioni o altri caratteri di controllo, o con � al posto di caratteri persi; serve testo semplice. Toglierli, o salvare di nuovo il file come UTF-8.`,
  'not-plain-text': (_, v) => `è ${v}, con interruzioni di riga o caratteri di controllo; serve testo semplice su una riga. Toglierli.`,

  'duplicate-id': (p, v) => `è ${v}, che la voce ${p['first']} dello stesso elenco ha già; ogni id compare una volta. Cambiare uno dei due.`,
  'same-place': (p) =>
    `sta a ${figure(p['heightM'])} m di altezza e a ${figure(p['offsetM'])} m dal centro, dove sta già la voce ${p['first']} dello stesso elenco; ogni posto si occupa una volta. Spostare uno dei due, o toglierlo.`,
  'reserved-id': (p, v) => `è ${v}, l’id della tabella incorporata; è ammesso ogni altro id. Cambiarlo, oppure togliere la tabella e usare quella incorporata.`,
  'no-such-reference': (p, v) =>
    `è ${v}, ma non corrisponde a ${REFERENCES[String(p['kind'])] ?? p['kind']}${p['within'] ? ` «${p['within']}»` : ''}; ` +
    (p['choices'] ? `ci sono: ${p['choices']}. ${meant(p) || 'Scegliere tra questi, o aggiungerlo.'}` : 'non ce n’è alcuno. Aggiungerlo, o lasciare vuoto questo campo.'),
  'not-rising': (p, v) => `è ${v}, non sopra il valore della voce precedente, ${figure(p['before'])}; serve più di ${figure(p['before'])}. Mettere le voci in ordine crescente.`,
  'least-above-most': (p, v) => `è ${v}, sopra ${p['mostField']}, che è ${figure(p['most'])}; al massimo è ammesso quello. Scambiare o correggere i due.`,

  'bad-formula': (p, v) => `è ${v}, che non si può calcolare. ${whyNoFormula(p)}`,

  'amends-itself': (_, v) => `è ${v}, il suo stesso id; una registrazione ne rettifica una precedente. Indicare la registrazione che sostituisce.`,
  'amends-in-circle': (_, v) => `è ${v}, che riporta a questa registrazione; le rettifiche riportano a una prima registrazione che non ne rettifica altre. Correggerne una.`,
  'amends-other-kind': (p, v) => `è ${v}, una registrazione di tipo ${p['other']}; una registrazione ${p['kind']} ne rettifica una dello stesso tipo. Indicarne un’altra, o fare una nuova registrazione.`,
  'amendment-without-reason': () => 'manca; una rettifica dice perché è stata fatta. Aggiungere il motivo.',
  'reason-without-amendment': (_, v) => `è ${v}, ma non si rettifica nulla; un motivo accompagna una rettifica. Indicare la registrazione rettificata, o togliere il motivo.`,
  'other-content': (_, v) => `è ${v}, una registrazione che è già qui e dice altro; una registrazione fatta non si cambia mai. Lasciarla fuori, o portare la modifica come rettifica con un proprio id.`,

  'no-header': (p) => `non ha intestazione; i nomi delle colonne devono stare nella prima riga. Aggiungerli: ${p['columns'] ?? 'block, row_spacing_m, tree_height_m, canopy_width_m'}.`,
  'no-rows': () => 'ha un’intestazione e nessuna riga sotto. Scegliere un file con almeno un giorno, o scriverne uno.',
  'unknown-column': (p, v) => `: «${v}» non è una colonna nota; sono note: ${p['known']}. ${meant(p) || 'Cambiarne il nome, o farlo cominciare con note_ perché sia ignorata.'}`,
  'duplicate-column': (_, v) => `: «${v}» compare due volte; ogni colonna compare una volta. Togliere o rinominare una delle due.`,
  'two-units': (p) => `: ${p['columns']} dicono la stessa grandezza in due unità; ne è ammessa una. Togliere l’altra.`,
  'missing-column': (p) => `manca; serve una di ${p['columns']}. Aggiungerla all’intestazione e a ogni riga.`,
  'field-count': (p) => `ha ${p['found']} campi, l’intestazione ${p['wanted']}; ne servono quanti nell’intestazione. Cercare un separatore mancante o di troppo, o una virgola decimale in un file separato da virgole.`,
  absent: (p) => `è vuoto; serve ${p['choices'] ? `uno di ${p['choices']}` : p['least'] === undefined ? 'un nome' : `un valore ${span(p)}`}. Compilarlo, o togliere la riga.`,
  'not-a-number': (p, v) => `è ${v}; serve un numero, ${span(p)}. Scrivere solo cifre, senza unità.`,
  'skirt-not-below-top': (p, v) => `è ${v || '0'}, ma ${p['heightColumn']} è ${p['height']}; la base della chioma deve stare più in basso della cima. Correggere uno dei due.`,
  'width-above-top': (p, v) => `è ${v}, ma ${p['heightColumn']} è ${p['height']}; sopra la cima una pianta non ha larghezza. Svuotare la cella, o correggere uno dei due.`,
  'name-too-long': (p, v) => `è ${v}, ${figure(p['length'])} caratteri; ne sono ammessi al massimo ${p['most']}. Accorciarlo.`,
  'not-utf8': (_, v) => `è ${v}, con byte che non sono testo UTF-8; ogni � sta per un carattere perso. Salvare di nuovo il file come UTF-8.`,
  'bad-quotes': (_, v) => `(${v}) ha virgolette aperte e non chiuse, o testo dopo quelle di chiusura; un campo tra virgolette finisce alle seconde. Chiuderle, e scrivere due volte le virgolette dentro un campo.`,
  'line-too-long': (p) => `è più lunga di ${figure(p['most'])} caratteri, il massimo ammesso. Verificare che il file sia una tabella con interruzioni di riga.`,
  'unclear-dates': (_, v) => `è ${v}, e nessuna data del file dice se viene prima il giorno o il mese; un giorno di calendario scritto come 2031-04-27 è chiaro. Scrivere così le date.`,
  'unit-unsaid': (_, v) => `: «${v}» non dice in quale unità è; serve un nome che finisca in _c o _f. Cambiarlo, come temperature_c o temperature_f.`,
  'moment-again': (_, v) => `è ${v}, che una riga precedente ha già; ogni momento si legge una volta. Togliere una delle due.`,
  'min-above-max': (p, v) => `è ${v}, sopra ${p['mostColumn']}, che è ${p['most']}; la minima è al massimo pari alla massima. Scambiare o correggere le due.`,
  'not-parquet': () => 'non è un file Parquet: non comincia come tale. Se è testo, dare al nome la fine .csv; altrimenti salvarlo di nuovo come Parquet.',
  'cut-off': () => 'è un file Parquet senza la sua fine; può essere troncato. Salvarlo o inviarlo di nuovo.',
  damaged: (p) => `non si può leggere${p['rows'] ? `, né le ${figure(p['rows'])} righe da lì in poi` : ''}: ${p['why']}. Il file è danneggiato, o scritto in un modo qui non noto; scriverlo di nuovo.`,
  'column-type': (p, v) => `è di tipo ${v}; servono ${p['wanted'] === 'name' ? 'testo o numeri interi' : 'numeri'}. Scrivere di nuovo la colonna come ${p['wanted'] === 'name' ? 'testo' : 'DOUBLE'}.`,
  'too-many-lines': (p) => `e tutte le seguenti non si leggono; se ne leggono al massimo ${figure(p['most'])}. Sfoltirle, o dividere il file.`
} as const satisfies Record<string, Sentence>;

/** `/blocks/0/canopy/heightM` as it is read aloud: blocks[0].canopy.heightM */
function fieldName(path: string): string {
  const steps = path.split('/').slice(1).map((s) => s.replaceAll('~1', '/').replaceAll('~0', '~'));
  return steps.map((s) => (/^\d+$/.test(s) ? `[${s}]` : `.${printable(s)}`)).join('').replace(/^\./, '');
}

/** A key of a foreign file, with what a terminal would obey made visible. */
const printable = (key: string): string =>
  (key.length > 60 ? key.slice(0, 59) + '…' : key).replace(/\p{C}/gu, (c) => '\\u' + (c.codePointAt(0) ?? 0).toString(16).padStart(4, '0'));

/** Where something stands in a table. */
export const placeInTable = (line: number, counted?: 'rows'): string => (line === 0 ? 'Il file' : `${counted ? 'Record' : 'Riga'} ${line}`);

/** One problem as a sentence or two that name the place, what stands there, what is allowed, and a remedy. */
export const problemSentence = ({ code, path, line, counted, column, value, parameters }: ToldProblem): string => {
  const sentence = (PROBLEM_SENTENCES as Record<string, Sentence>)[code];
  const said = sentence ? sentence(parameters, value) : `è rifiutato (${code}).`;
  const place =
    line === undefined ? fieldName(path ?? '') || 'Il file' : placeInTable(line, counted) + (column && !said.startsWith(':') ? `, ${column}` : '');
  return said.startsWith(':') ? place + said : `${place} ${said}`;
};

/** What follows a list of problems that was cut. */
export const moreProblems = (more: number): string => (more > 0 ? `E ${more === 1 ? 'un altro problema' : `altri ${figure(more)} problemi`}.` : '');
