import type { ToldProblem } from '../en/problems.ts';
import { whyNoFormula } from '../strategies/formula.ts';

type P = Readonly<Record<string, number | string>>;
/** What is said of a field: after its name, `said` with the value that stands there. */
type Sentence = (p: P, value: string) => string;

/** 12345.6 → 12 345,6 */
const figure = (n: number | string | undefined): string =>
  typeof n === 'number' ? n.toLocaleString('en', { maximumSignificantDigits: 12 }).replaceAll(',', '\u202f').replace('.', ',') : String(n);
const UNITS: Readonly<Record<string, string>> = { '1': '', deg: '°', degC: '°C', 'm2/m3': 'm²/m³', 'm3/h': 'm³/h', 'gal/1000 ft3': 'US gal por 1000 ft³' };
const unitOf = (p: P): string => {
  const unit = UNITS[String(p['unit'])] ?? String(p['unit'] ?? '');
  return unit && ' ' + unit;
};
const span = (p: P): string => (p['least'] === undefined ? '' : `de ${figure(p['least'])} a ${figure(p['most'])}${unitOf(p)}`);
const meant = (p: P): string => (p['nearest'] ? `¿Quería decir «${p['nearest']}»?` : '');

/** Remedies by unit: most numbers out of range were written in another unit, or with a slipped decimal point. */
const CHECK_UNIT: Readonly<Record<string, string>> = {
  m: 'Compruebe la coma decimal y que esté en metros: 1 ft son 0,3048 m.',
  ft: 'Compruebe la coma decimal y que esté en pies: 1 m son 3,28 ft.',
  bar: 'Compruebe la coma decimal y que esté en bar: 100 psi son 6,9 bar.',
  'km/h': 'Compruebe la coma decimal y que esté en km/h: 1 mph son 1,61 km/h.',
  'L/ha': 'Compruebe la coma decimal y que esté en litros por hectárea: 1 US gal/acre son 9,35 L/ha.',
  L: 'Compruebe la coma decimal y que esté en litros: 1 US gal son 3,79 L.',
  'L/min': 'Compruebe la coma decimal y que esté en litros por minuto: 1 US gal/min son 3,79 L/min.',
  'm3/h': 'Compruebe la coma decimal y que esté en metros cúbicos por hora: 1 cfm son 1,70 m³/h.',
  degC: 'Compruebe que esté en grados Celsius: 77 °F son 25 °C.',
  'm/s': 'Compruebe que esté en metros por segundo: 1 mph son 0,447 m/s.',
  ha: 'Compruebe la coma decimal y que esté en hectáreas: 1 acre son 0,405 ha.',
  'm2/m3': 'Compruebe la coma decimal y que sea área foliar de una cara por volumen de copa.',
  'gal/1000 ft3': 'Compruebe la coma decimal y que esté en galones de EE. UU. por 1000 pies cúbicos.'
};
const checkUnit = (p: P): string => CHECK_UNIT[String(p['unit'])] ?? 'Compruebe la coma decimal y corríjalo.';

const KINDS: Readonly<Record<string, string>> = {
  number: 'un número',
  string: 'un texto entre comillas',
  boolean: 'true o false',
  object: 'un objeto { … }',
  array: 'una lista [ … ]'
};
const wanted = (p: P): string => {
  if (p['choices']) return `uno de estos: ${p['choices']}`;
  const kind = KINDS[String(p['wanted'])] ?? String(p['wanted']);
  return p['least'] === undefined ? kind : `${kind}, ${span(p)}`;
};

const REFERENCES: Readonly<Record<string, string>> = {
  machine: 'ninguna máquina en este archivo',
  label: 'ninguna etiqueta en este archivo',
  gear: 'ninguna marcha en la máquina',
  position: 'ninguna posición de boquilla en la máquina',
  table: 'ninguna tabla de boquillas en este archivo',
  size: 'ningún calibre en la tabla de boquillas',
  assumption: 'ningún supuesto en este programa',
  rung: 'ninguna etapa en la parcela',
  record: 'ningún registro en el archivo ni entre los guardados aquí'
};

/** Sentences about a document or a table, by code: what stands there, what is allowed, what to do. */
export const PROBLEM_SENTENCES = {
  'too-large': (p) => `tiene ${figure(p['length'])} caracteres; se leen como máximo ${figure(p['most'])}. Divídalo en varios archivos.`,
  empty: () => 'está vacío; se espera un documento. Elija otro archivo.',
  'not-json': (p, v) =>
    v
      ? `no es JSON: ${v} no puede estar en la línea ${p['line']}, columna ${p['column']}. Busque justo antes una coma, unas comillas o un paréntesis que falten.`
      : `no es JSON: termina demasiado pronto, en la línea ${p['line']}, columna ${p['column']}. Puede que el archivo esté cortado; guárdelo o envíelo de nuevo.`,
  'too-deep': (p) => `está anidado más de ${p['most']} niveles; un documento nunca lo está. No es un archivo de este programa, o está dañado.`,
  'too-many-values': (p) => `contiene más de ${figure(p['most'])} valores. Divídalo en varios archivos.`,
  'duplicate-key': (p) => `aparece dos veces en el mismo objeto, la segunda en la línea ${p['line']}, columna ${p['column']}; una clave puede aparecer una vez. Conserve una de las dos.`,
  'forbidden-key': (p) => `no puede usarse como clave (línea ${p['line']}, columna ${p['column']}). Quítela.`,
  'other-format': (p, v) => `${v ? `es ${v}` : 'no está'}; solo se lee «${p['wanted']}». Este archivo lo hizo otro programa o es para otro programa.`,
  'not-a-version': (p, v) => `${v ? `es ${v}` : 'no está'}; se espera un número entero de 1 a ${p['newest']}. Escriba 1, salvo que el archivo lo hiciera un programa posterior.`,
  'newer-version': (p, v) => `es ${v}; este programa lee versiones hasta ${p['newest']}. El archivo lo hizo un programa más nuevo: actualice este.`,

  missing: (p) => `falta; se necesita ${wanted(p)}. Añádalo.`,
  'wrong-type': (p, v) => `es ${v}; se necesita ${wanted(p)}. ${p['wanted'] === 'number' ? 'Escriba solo la cifra, sin comillas.' : 'Escriba eso en su lugar.'}`,
  'not-finite': (p, v) => `es ${v}, demasiado grande para ser un número; se admite ${span(p)}. ${checkUnit(p)}`,
  'out-of-range': (p, v) => `es ${v}; se admite ${span(p)}. ${checkUnit(p)}`,
  'not-whole': (p, v) => `es ${v}; se necesita un número entero, ${span(p)}. Redondéelo.`,
  'too-short': (p, v) => `es ${v}; se necesita al menos ${p['bound']} carácter. Escriba algo.`,
  'too-long': (p, v) => `es ${v}, ${figure(p['length'])} caracteres; se admiten como máximo ${p['bound']}. Acórtelo.`,
  'too-few': (p) => `tiene ${p['length']} entradas; debe haber al menos ${p['bound']}. Añada lo que falta.`,
  'too-many': (p) => `tiene ${figure(p['length'])} entradas; se admiten como máximo ${p['bound']}. Divídalo en varios.`,
  'not-a-choice': (p, v) => `es ${v}; se admiten: ${p['choices']}. ${meant(p) || 'Elija uno de estos.'}`,
  'unknown-key': (p) => `no es aquí un campo; se conocen: ${p['known']}. ${meant(p) || 'Corríjalo o quítelo.'}`,
  'not-an-id': (p, v) => `es ${v}, que no puede ser un identificador: de 1 a ${p['most']} letras, cifras, puntos, guiones o guiones bajos, con una letra o una cifra al principio. Cámbiele el nombre.`,
  'not-a-date': (_, v) => `es ${v}; se necesita un día del calendario escrito como 2031-04-27. Escríbalo así.`,
  'not-a-time': (_, v) => `es ${v}; se necesita una hora del día escrita como 07:30. Escríbala así.`,
  'not-a-moment': (_, v) => `${v ? `es ${v}` : 'está vacío'}; se necesitan día y hora escritos como 2031-04-27T07:30:00+02:00. Escríbalos así.`,
  'unfit-characters': (_, v) => `es ${v}, con tabuladores u otros caracteres de control, o con � en lugar de caracteres perdidos; se necesita texto simple. Quítelos o guarde de nuevo el archivo como UTF-8.`,
  'not-plain-text': (_, v) => `es ${v}, con saltos de línea o caracteres de control; se necesita texto simple en una línea. Quítelos.`,

  'bad-formula': (p, v) => `es ${v}, que no se puede calcular. ${whyNoFormula(p)}`,

  'duplicate-id': (p, v) => `es ${v}, que ya tiene la entrada ${p['first']} de la misma lista; cada identificador aparece una vez. Cambie el nombre de una de las dos.`,
  'same-place': (p) =>
    `está a ${figure(p['heightM'])} m de altura y a ${figure(p['offsetM'])} m del centro, donde ya está la entrada ${p['first']} de la misma lista; cada sitio se ocupa una vez. Mueva una de las dos, o quítela.`,
  'reserved-id': (p, v) => `es ${v}, el identificador de la tabla incorporada; se admite cualquier otro. Cámbiele el nombre, o quite la tabla y use la incorporada.`,
  'no-such-reference': (p, v) =>
    `es ${v}, pero no hay ${REFERENCES[String(p['kind'])] ?? p['kind']}${p['within'] ? ` «${p['within']}»` : ''} con ese nombre; ` +
    (p['choices'] ? `hay: ${p['choices']}. ${meant(p) || 'Elija uno de estos, o añádalo.'}` : 'no hay ninguno. Añádalo, o deje fuera este campo.'),
  'not-rising': (p, v) => `es ${v}, no mayor que ${figure(p['before'])}, el de la entrada anterior; se necesita más de ${figure(p['before'])}. Ponga las entradas en orden creciente.`,
  'least-above-most': (p, v) => `es ${v}, mayor que ${p['mostField']}, que es ${figure(p['most'])}; como máximo se admite eso. Intercambie o corrija los dos.`,

  'amends-itself': (_, v) => `es ${v}, su propio identificador; un registro enmienda otro anterior. Nombre el registro al que sustituye.`,
  'amends-in-circle': (_, v) => `es ${v}, que lleva de vuelta a este registro; las enmiendas llevan a un primer registro que no enmienda ninguno. Corrija uno de ellos.`,
  'amends-other-kind': (p, v) => `es ${v}, un registro de tipo ${p['other']}; un registro de tipo ${p['kind']} enmienda uno de su mismo tipo. Nombre otro, o haga un registro nuevo.`,
  'amendment-without-reason': () => 'falta; una enmienda dice por qué se hizo. Añada el motivo.',
  'reason-without-amendment': (_, v) => `es ${v}, pero no se enmienda nada; un motivo pertenece a una enmienda. Nombre el registro que se enmienda, o quite el motivo.`,
  'other-content': (_, v) => `es ${v}, un registro que ya está aquí y dice otra cosa; un registro hecho no se cambia nunca. Déjelo fuera, o traiga el cambio como enmienda con un identificador propio.`,

  'no-header': (p) => `no tiene línea de encabezado; los nombres de las columnas deben estar en la primera línea. Añádalos: ${p['columns'] ?? 'block, row_spacing_m, tree_height_m, canopy_width_m'}.`,
  'no-rows': () => 'tiene encabezado y ninguna línea debajo. Elija un archivo con al menos un día, o escriba uno.',
  'unknown-column': (p, v) => `: «${v}» no es una columna conocida; se conocen: ${p['known']}. ${meant(p) || 'Cámbiele el nombre, o haga que empiece por note_ para que se pase por alto.'}`,
  'duplicate-column': (_, v) => `: «${v}» aparece dos veces; cada columna aparece una vez. Quite una de las dos o cámbiele el nombre.`,
  'two-units': (p) => `: ${p['columns']} dan la misma magnitud en dos unidades; se admite una de ellas. Quite la otra.`,
  'missing-column': (p) => `falta; se necesita una de ${p['columns']}. Añádala al encabezado y a cada línea.`,
  'field-count': (p) => `tiene ${p['found']} campos, el encabezado ${p['wanted']}; se necesitan tantos como en el encabezado. Busque un separador que falte o que sobre, o una coma decimal en un archivo separado por comas.`,
  absent: (p) => `está vacío; se necesita ${p['choices'] ? `uno de ${p['choices']}` : p['least'] === undefined ? 'un nombre' : `un valor ${span(p)}`}. Rellénelo o quite la línea.`,
  'not-a-number': (p, v) => `es ${v}; se necesita un número, ${span(p)}. Escriba solo cifras, sin unidad.`,
  'skirt-not-below-top': (p, v) => `es ${v || '0'}, pero ${p['heightColumn']} es ${p['height']}; la falda debe estar por debajo de la cima. Corrija uno de los dos.`,
  'width-above-top': (p, v) => `es ${v}, pero ${p['heightColumn']} es ${p['height']}; por encima de su cima un árbol no tiene ancho. Vacíe la celda, o corrija uno de los dos.`,
  'name-too-long': (p, v) => `es ${v}, ${figure(p['length'])} caracteres; se admiten como máximo ${p['most']}. Acórtelo.`,
  'not-utf8': (_, v) => `es ${v}, con bytes que no son texto UTF-8; cada � está en lugar de un carácter perdido. Guarde de nuevo el archivo como UTF-8.`,
  'bad-quotes': (_, v) => `(${v}) tiene unas comillas que se abren y no se cierran, o texto tras las comillas de cierre; un campo entre comillas termina en las segundas. Ciérrelas, y escriba dos veces las comillas que estén dentro de un campo.`,
  'line-too-long': (p) => `tiene más de ${figure(p['most'])} caracteres, el máximo que se admite. Compruebe que el archivo es una tabla con saltos de línea.`,
  'unclear-dates': (_, v) => `es ${v}, y ninguna fecha del archivo dice si va primero el día o el mes; un día del calendario escrito como 2031-04-27 es claro. Escriba así las fechas.`,
  'unit-unsaid': (_, v) => `: «${v}» no dice en qué unidad está; hace falta un nombre que termine en _c o _f. Cámbielo, como temperature_c o temperature_f.`,
  'moment-again': (_, v) => `es ${v}, que ya tiene una línea anterior; cada momento se lee una vez. Quite una de las dos.`,
  'min-above-max': (p, v) => `es ${v}, mayor que ${p['mostColumn']}, que es ${p['most']}; la mínima es como mucho la máxima. Intercambie o corrija las dos.`,
  'not-parquet': () => 'no es un archivo Parquet: no empieza como tal. Indique su formato, --format csv, o guárdelo de nuevo como Parquet.',
  'cut-off': () => 'es un archivo Parquet sin su final; puede que esté cortado. Guárdelo o envíelo de nuevo.',
  damaged: (p) => `no se puede leer${p['rows'] ? `, ni las ${figure(p['rows'])} filas desde ahí` : ''}: ${p['why']}. El archivo está dañado, o escrito de una manera que aquí no se conoce; escríbalo de nuevo.`,
  'column-type': (p, v) => `es de tipo ${v}; se necesitan ${p['wanted'] === 'name' ? 'texto o números enteros' : 'números'}. Escriba de nuevo la columna como ${p['wanted'] === 'name' ? 'texto' : 'DOUBLE'}.`,
  'too-many-lines': (p) => `y todas las siguientes no se leen; se leen como máximo ${figure(p['most'])} líneas. Redúzcalas o divida el archivo.`
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
export const placeInTable = (line: number, counted?: 'rows'): string => (line === 0 ? 'El archivo' : `${counted ? 'Fila' : 'Línea'} ${line}`);

/** One problem as a sentence or two that name the place, what stands there, what is allowed, and a remedy. */
export const problemSentence = ({ code, path, line, counted, column, value, parameters }: ToldProblem): string => {
  const sentence = (PROBLEM_SENTENCES as Record<string, Sentence>)[code];
  const said = sentence ? sentence(parameters, value) : `se rechaza (${code}).`;
  const place =
    line === undefined ? fieldName(path ?? '') || 'El archivo' : placeInTable(line, counted) + (column && !said.startsWith(':') ? `, ${column}` : '');
  return said.startsWith(':') ? place + said : `${place} ${said}`;
};

/** What follows a list of problems that was cut. */
export const moreProblems = (more: number): string => (more > 0 ? `Y ${figure(more)} ${more === 1 ? 'problema' : 'problemas'} más.` : '');
