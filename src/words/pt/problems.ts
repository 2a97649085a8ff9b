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
const meant = (p: P): string => (p['nearest'] ? `Queria dizer “${p['nearest']}”?` : '');

/** Remedies by unit: most numbers out of range were written in another unit, or with a slipped decimal point. */
const CHECK_UNIT: Readonly<Record<string, string>> = {
  m: 'Verifique a vírgula decimal e se está em metros: 1 ft são 0,3048 m.',
  ft: 'Verifique a vírgula decimal e se está em pés: 1 m são 3,28 ft.',
  bar: 'Verifique a vírgula decimal e se está em bar: 100 psi são 6,9 bar.',
  'km/h': 'Verifique a vírgula decimal e se está em km/h: 1 mph são 1,61 km/h.',
  'L/ha': 'Verifique a vírgula decimal e se está em litros por hectare: 1 US gal/acre são 9,35 L/ha.',
  L: 'Verifique a vírgula decimal e se está em litros: 1 US gal são 3,79 L.',
  'L/min': 'Verifique a vírgula decimal e se está em litros por minuto: 1 US gal/min são 3,79 L/min.',
  'm3/h': 'Verifique a vírgula decimal e se está em metros cúbicos por hora: 1 cfm são 1,70 m³/h.',
  degC: 'Verifique se está em graus Celsius: 77 °F são 25 °C.',
  'm/s': 'Verifique se está em metros por segundo: 1 mph são 0,447 m/s.',
  ha: 'Verifique a vírgula decimal e se está em hectares: 1 acre são 0,405 ha.',
  'm2/m3': 'Verifique a vírgula decimal e se é área foliar de um só lado por volume de copa.',
  'gal/1000 ft3': 'Verifique a vírgula decimal e se está em galões dos EUA por 1000 pés cúbicos.'
};
const checkUnit = (p: P): string => CHECK_UNIT[String(p['unit'])] ?? 'Verifique a vírgula decimal e corrija.';

const KINDS: Readonly<Record<string, string>> = {
  number: 'um número',
  string: 'um texto entre aspas',
  boolean: 'true ou false',
  object: 'um objeto { … }',
  array: 'uma lista [ … ]'
};
const wanted = (p: P): string => {
  if (p['choices']) return `um destes: ${p['choices']}`;
  const kind = KINDS[String(p['wanted'])] ?? String(p['wanted']);
  return p['least'] === undefined ? kind : `${kind}, ${span(p)}`;
};

const REFERENCES: Readonly<Record<string, string>> = {
  machine: 'nenhuma máquina assim neste ficheiro',
  label: 'nenhum rótulo assim neste ficheiro',
  gear: 'nenhuma marcha assim na máquina',
  position: 'nenhuma posição de bico assim na máquina',
  table: 'nenhuma tabela de bicos assim neste ficheiro',
  size: 'nenhum calibre assim na tabela de bicos',
  assumption: 'nenhum pressuposto assim neste programa',
  rung: 'nenhuma etapa assim na parcela',
  record: 'nenhum registo assim no ficheiro nem entre os guardados aqui'
};

/** Sentences about a document or a table, by code: what stands there, what is allowed, what to do. */
export const PROBLEM_SENTENCES = {
  'too-large': (p) => `tem ${figure(p['length'])} caracteres; leem-se no máximo ${figure(p['most'])}. Divida em vários ficheiros.`,
  empty: () => 'está vazio; espera-se um documento. Escolha outro ficheiro.',
  'not-json': (p, v) =>
    v
      ? `não é JSON: ${v} não pode estar na linha ${p['line']}, coluna ${p['column']}. Procure uma vírgula, aspas ou um parêntese em falta logo antes.`
      : `não é JSON: acaba cedo demais, na linha ${p['line']}, coluna ${p['column']}. O ficheiro pode ter sido cortado; guarde-o ou envie-o de novo.`,
  'too-deep': (p) => `está encaixado em mais de ${p['most']} níveis; um documento nunca está. Não é um ficheiro deste programa, ou ficou danificado.`,
  'too-many-values': (p) => `contém mais de ${figure(p['most'])} valores. Divida em vários ficheiros.`,
  'duplicate-key': (p) => `aparece duas vezes no mesmo objeto, a segunda na linha ${p['line']}, coluna ${p['column']}; uma chave pode aparecer uma vez. Conserve uma das duas.`,
  'forbidden-key': (p) => `não pode ser usado como chave (linha ${p['line']}, coluna ${p['column']}). Retire-o.`,
  'other-format': (p, v) => `${v ? `é ${v}` : 'não está'}; só se lê “${p['wanted']}”. Este ficheiro foi feito por outro programa ou para outro programa.`,
  'not-a-version': (p, v) => `${v ? `é ${v}` : 'não está'}; espera-se um número inteiro de 1 a ${p['newest']}. Escreva 1, a não ser que o ficheiro tenha sido feito por um programa posterior.`,
  'newer-version': (p, v) => `é ${v}; este programa lê versões até ${p['newest']}. O ficheiro foi feito por um programa mais recente: atualize este.`,

  missing: (p) => `falta; é preciso ${wanted(p)}. Acrescente-o.`,
  'wrong-type': (p, v) => `é ${v}; é preciso ${wanted(p)}. ${p['wanted'] === 'number' ? 'Escreva só o número, sem aspas.' : 'Escreva isso em seu lugar.'}`,
  'not-finite': (p, v) => `é ${v}, demasiado grande para ser um número; admite-se ${span(p)}. ${checkUnit(p)}`,
  'out-of-range': (p, v) => `é ${v}; admite-se ${span(p)}. ${checkUnit(p)}`,
  'not-whole': (p, v) => `é ${v}; é preciso um número inteiro, ${span(p)}. Arredonde-o.`,
  'too-short': (p, v) => `é ${v}; é preciso pelo menos ${p['bound']} caráter. Escreva alguma coisa.`,
  'too-long': (p, v) => `é ${v}, ${figure(p['length'])} caracteres; admitem-se no máximo ${p['bound']}. Encurte-o.`,
  'too-few': (p) => `tem ${p['length']} entradas; tem de haver pelo menos ${p['bound']}. Acrescente o que falta.`,
  'too-many': (p) => `tem ${figure(p['length'])} entradas; admitem-se no máximo ${p['bound']}. Divida em vários.`,
  'not-a-choice': (p, v) => `é ${v}; admitem-se: ${p['choices']}. ${meant(p) || 'Escolha um destes.'}`,
  'unknown-key': (p) => `não é um campo aqui; conhecem-se: ${p['known']}. ${meant(p) || 'Corrija-o ou retire-o.'}`,
  'not-an-id': (p, v) => `é ${v}, que não pode ser um identificador: de 1 a ${p['most']} letras, algarismos, pontos, hífenes ou traços baixos, com uma letra ou um algarismo no início. Mude-lhe o nome.`,
  'not-a-date': (_, v) => `é ${v}; é preciso um dia do calendário escrito como 2031-04-27. Escreva-o assim.`,
  'not-a-time': (_, v) => `é ${v}; é precisa uma hora do dia escrita como 07:30. Escreva-a assim.`,
  'not-a-moment': (_, v) => `${v ? `é ${v}` : 'está vazio'}; são precisos dia e hora escritos como 2031-04-27T07:30:00+02:00. Escreva-os assim.`,
  'unfit-characters': (_, v) => `é ${v}, com tabulações ou outros caracteres de controlo, ou com � em lugar de caracteres perdidos; é preciso texto simples. Retire-os, ou guarde de novo o ficheiro como UTF-8.`,
  'not-plain-text': (_, v) => `é ${v}, com quebras de linha ou caracteres de controlo; é preciso texto simples numa só linha. Retire-os.`,

  'duplicate-id': (p, v) => `é ${v}, que a entrada ${p['first']} da mesma lista já tem; cada identificador aparece uma vez. Mude o nome de uma das duas.`,
  'same-place': (p) =>
    `está a ${figure(p['heightM'])} m de altura e a ${figure(p['offsetM'])} m do meio, onde já está a entrada ${p['first']} da mesma lista; cada lugar é ocupado uma vez. Desloque uma das duas, ou retire-a.`,
  'reserved-id': (p, v) => `é ${v}, o identificador da tabela incorporada; admite-se qualquer outro. Mude-lhe o nome, ou retire a tabela e use a incorporada.`,
  'no-such-reference': (p, v) =>
    `é ${v}, mas não há ${REFERENCES[String(p['kind'])] ?? p['kind']}${p['within'] ? ` “${p['within']}”` : ''}; ` +
    (p['choices'] ? `há: ${p['choices']}. ${meant(p) || 'Escolha um destes, ou acrescente-o.'}` : 'não há nenhum. Acrescente-o, ou deixe este campo de fora.'),
  'not-rising': (p, v) => `é ${v}, não acima de ${figure(p['before'])}, o da entrada anterior; é preciso mais de ${figure(p['before'])}. Ponha as entradas por ordem crescente.`,
  'least-above-most': (p, v) => `é ${v}, acima de ${p['mostField']}, que é ${figure(p['most'])}; admite-se no máximo isso. Troque ou corrija os dois.`,

  'bad-formula': (p, v) => `é ${v}, que não pode ser calculado. ${whyNoFormula(p)}`,

  'amends-itself': (_, v) => `é ${v}, o seu próprio identificador; um registo retifica outro anterior. Indique o registo que substitui.`,
  'amends-in-circle': (_, v) => `é ${v}, que leva de volta a este registo; as retificações levam a um primeiro registo que não retifica nenhum. Corrija um deles.`,
  'amends-other-kind': (p, v) => `é ${v}, um registo do tipo ${p['other']}; um registo do tipo ${p['kind']} retifica um do seu próprio tipo. Indique outro, ou faça um registo novo.`,
  'amendment-without-reason': () => 'falta; uma retificação diz porque foi feita. Acrescente o motivo.',
  'reason-without-amendment': (_, v) => `é ${v}, mas nada é retificado; um motivo pertence a uma retificação. Indique o registo que é retificado, ou retire o motivo.`,
  'other-content': (_, v) => `é ${v}, um registo que já cá está e diz outra coisa; um registo feito nunca se altera. Deixe-o de fora, ou traga a alteração como retificação com um identificador próprio.`,

  'no-header': (p) => `não tem linha de cabeçalho; os nomes das colunas têm de estar na primeira linha. Acrescente-os: ${p['columns'] ?? 'block, row_spacing_m, tree_height_m, canopy_width_m'}.`,
  'no-rows': () => 'tem cabeçalho e nenhuma linha por baixo. Escolha um ficheiro com pelo menos um dia, ou escreva um.',
  'unknown-column': (p, v) => `: “${v}” não é uma coluna conhecida; conhecem-se: ${p['known']}. ${meant(p) || 'Mude-lhe o nome, ou faça-a começar por note_ para que seja passada à frente.'}`,
  'duplicate-column': (_, v) => `: “${v}” aparece duas vezes; cada coluna aparece uma vez. Retire uma das duas ou mude-lhe o nome.`,
  'two-units': (p) => `: ${p['columns']} dão a mesma grandeza em duas unidades; admite-se uma delas. Retire a outra.`,
  'missing-column': (p) => `falta; é precisa uma de ${p['columns']}. Acrescente-a ao cabeçalho e a cada linha.`,
  'field-count': (p) => `tem ${p['found']} campos, o cabeçalho ${p['wanted']}; são precisos tantos como no cabeçalho. Procure um separador em falta ou a mais, ou uma vírgula decimal num ficheiro separado por vírgulas.`,
  absent: (p) => `está vazio; é preciso ${p['choices'] ? `um de ${p['choices']}` : p['least'] === undefined ? 'um nome' : `um valor ${span(p)}`}. Preencha-o, ou retire a linha.`,
  'not-a-number': (p, v) => `é ${v}; é preciso um número, ${span(p)}. Escreva só algarismos, sem unidade.`,
  'skirt-not-below-top': (p, v) => `é ${v || '0'}, mas ${p['heightColumn']} é ${p['height']}; a saia tem de estar abaixo do topo. Corrija um dos dois.`,
  'width-above-top': (p, v) => `é ${v}, mas ${p['heightColumn']} é ${p['height']}; acima do topo uma árvore não tem largura. Esvazie a célula, ou corrija um dos dois.`,
  'name-too-long': (p, v) => `é ${v}, ${figure(p['length'])} caracteres; admitem-se no máximo ${p['most']}. Encurte-o.`,
  'not-utf8': (_, v) => `é ${v}, com bytes que não são texto UTF-8; cada � está em lugar de um caráter perdido. Guarde de novo o ficheiro como UTF-8.`,
  'bad-quotes': (_, v) => `(${v}) tem aspas que se abrem e não se fecham, ou texto depois das aspas de fecho; um campo entre aspas acaba nas segundas. Feche-as, e escreva duas vezes as aspas dentro de um campo.`,
  'line-too-long': (p) => `tem mais de ${figure(p['most'])} caracteres, o máximo que se admite. Verifique se o ficheiro é uma tabela com quebras de linha.`,
  'unclear-dates': (_, v) => `é ${v}, e nenhuma data do ficheiro diz se vem primeiro o dia ou o mês; um dia do calendário escrito como 2031-04-27 é claro. Escreva assim as datas.`,
  'unit-unsaid': (_, v) => `: “${v}” não diz em que unidade está; é preciso um nome que acabe em _c ou _f. Mude-lhe o nome, como temperature_c ou temperature_f.`,
  'moment-again': (_, v) => `é ${v}, que uma linha anterior já tem; cada momento é lido uma vez. Retire uma das duas.`,
  'min-above-max': (p, v) => `é ${v}, acima de ${p['mostColumn']}, que é ${p['most']}; a mínima é, no máximo, igual à máxima. Troque ou corrija as duas.`,
  'not-parquet': () => 'não é um ficheiro Parquet: não começa como um. Se for texto, faça o nome acabar em .csv; senão, guarde-o de novo como Parquet.',
  'cut-off': () => 'é um ficheiro Parquet sem o fim; pode ter sido cortado. Guarde-o ou envie-o de novo.',
  damaged: (p) => `não pode ser lido${p['rows'] ? `, nem as ${figure(p['rows'])} linhas daí em diante` : ''}: ${p['why']}. O ficheiro está danificado, ou escrito de uma forma que aqui não se conhece; escreva-o de novo.`,
  'column-type': (p, v) => `é do tipo ${v}; são precisos ${p['wanted'] === 'name' ? 'texto ou números inteiros' : 'números'}. Escreva de novo a coluna como ${p['wanted'] === 'name' ? 'texto' : 'DOUBLE'}.`,
  'too-many-lines': (p) => `e todas as seguintes não são lidas; leem-se no máximo ${figure(p['most'])} linhas. Reduza-as ou divida o ficheiro.`
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
export const placeInTable = (line: number, counted?: 'rows'): string => (line === 0 ? 'O ficheiro' : `${counted ? 'Fila' : 'Linha'} ${line}`);

/** One problem as a sentence or two that name the place, what stands there, what is allowed, and a remedy. */
export const problemSentence = ({ code, path, line, counted, column, value, parameters }: ToldProblem): string => {
  const sentence = (PROBLEM_SENTENCES as Record<string, Sentence>)[code];
  const said = sentence ? sentence(parameters, value) : `é recusado (${code}).`;
  const place =
    line === undefined ? fieldName(path ?? '') || 'O ficheiro' : placeInTable(line, counted) + (column && !said.startsWith(':') ? `, ${column}` : '');
  return said.startsWith(':') ? place + said : `${place} ${said}`;
};

/** What follows a list of problems that was cut. */
export const moreProblems = (more: number): string => (more > 0 ? `E mais ${figure(more)} ${more === 1 ? 'problema' : 'problemas'}.` : '');
