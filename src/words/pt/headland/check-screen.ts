import type { checkScreen as EN } from '../../en/headland/check-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the first four steps on the headland. */
export const checkScreen: Translated<typeof EN> = {
  items: {
    clean: { name: 'A máquina está limpa', how: 'Tanque, tubagem e exterior lavados.' },
    leaks: { name: 'Sem fugas', how: 'Bomba a trabalhar, mangueiras e ligações sob pressão.' },
    'nozzles-placed': { name: 'Bicos certos nos lugares certos', how: 'Tipo, calibre e lado como na regulação.' },
    filters: { name: 'Filtros limpos', how: 'Filtros de aspiração, de pressão e dos bicos.' },
    'nozzles-brushed': { name: 'Bicos escovados', how: 'Escova macia e água, nunca arame.' },
    drips: { name: 'Não pinga depois de fechar', how: 'Observe cada bico alguns segundos depois de fechar.' },
    'gauge-rest': { name: 'Manómetro a zero em repouso', how: 'Bomba parada, sem pressão.' },
    'gauge-scale': { name: 'Manómetro adequado à pressão', how: 'Pressão de trabalho a meio da escala, divisões finas.' },
    agitation: { name: 'A agitação funciona', how: 'Superfície em movimento enquanto os bicos pulverizam.' },
    guards: { name: 'Proteções montadas: veio, ventilador, correias', how: 'Veja com tudo parado.' },
    pto: { name: 'A rotação da TDF está certa', how: 'Com taquímetro, à rotação do motor usada para pulverizar.' },
    'water-only': { name: 'Só água limpa no tanque', how: 'Nenhum produto até ao fim da verificação.' },
    protection: { name: 'Equipamento de proteção vestido', how: 'Como diz o rótulo do produto: ainda há resíduos na máquina.' },
    watch: { name: 'Cronómetro', how: 'Ou o daqui.' },
    tape: { name: 'Fita métrica', how: 'E marcas para as duas pontas.' },
    jug: { name: 'Copo graduado' },
    hoses: { name: 'Mangueiras para levar a calda ao copo' },
    gauge: { name: 'Segundo manómetro', how: 'Que se sabe estar certo.' },
    brush: { name: 'Escova macia', how: 'E bicos e filtros de reserva.' },
    ribbon: { name: 'Fita para o topo da árvore' },
    paper: { name: 'Papel hidrossensível' },
    'half-tank': { name: 'Tanque cerca de meio' },
    'fan-on': { name: 'Ventilador e bomba a trabalhar' },
    'in-alley': { name: 'Na entrelinha, não na estrada' },
    'spraying-gear': { name: 'Marcha e rotação do motor como a pulverizar' },
    'rolling-start': { name: 'À velocidade certa antes da primeira marca' }
  },

  before: {
    intro: 'Dê uma volta à máquina. Um defeito fica anotado com o que faz ao resultado.',
    safety: 'O veio, o ventilador e a pressão podem matar: olhe e mexa só com tudo parado. Apenas água limpa. Use o que o rótulo do produto pede; as regras locais estão primeiro.',
    walk: 'Volta à máquina',
    tools: 'A levar',
    progress: (done, all) => `${done} de ${all}`,
    faults: (n) => (n === 0 ? 'nenhum defeito até agora' : n === 1 ? '1 defeito' : `${n} defeitos`),
    fine: 'bem',
    fault: 'defeito',
    withMe: (name) => `${name}: levo comigo`,
    mark: (name, state) => `${name}: ${state}`
  },

  watch: {
    start: 'Iniciar',
    markEnd: 'Marcar o fim',
    startOver: 'Recomeçar',
    goOn: 'Não foi falsa partida: continuar',
    dropped: 'Falsa partida: nada foi acrescentado.',
    elapsed: 'Cronómetro',
    notKept: 'Este navegador não guarda nada: recarregar faria perder o tempo em curso. Não feche nem recarregue a página.',
    elsewhere: (where) => `O cronómetro está a contar para ${where}.`,
    what: { run: 'um percurso de velocidade', refill: 'o reenchimento', jug: 'um copo' },
    stopIt: 'Desistir desse tempo',
    notCounted: (time, least, most) => `O cronómetro contou ${time}: só vale de ${least} a ${most}, por isso nada foi acrescentado. Inicie de novo.`
  },

  speed: {
    intro: (course) => `${course}, ida e volta. Tanque a meio, ventilador ligado, à velocidade certa antes da primeira marca.`,
    course: 'distância marcada',
    courses: 'distâncias habituais',
    next: (n, direction) => `percurso ${n}, ${direction}`,
    run: (n) => `percurso ${n}`,
    directions: { out: 'ida', back: 'volta' },
    turn: (n, direction) => `o percurso ${n} é de ${direction}; inverter`,
    typed: 'ou escreva um tempo, s ou min:s',
    typedAdd: 'Juntar percurso',
    typedBad: (text, range) => `tempo: “${text.slice(0, 12)}” não é um tempo de ${range} s. Escreva segundos (62,4) ou minutos e segundos (1:02,4).`,
    runs: 'Percursos',
    none: 'Ainda nenhum percurso. Dois ou três em cada sentido dão um resultado.',
    most: 'Esta ronda já tem 50 percursos. Apague um primeiro.',
    remove: (n) => `Apagar o percurso ${n}`,
    terms: 'Como se fazem os percursos',
    yes: 'sim',
    no: 'não',
    display: 'o visor do trator mostra',
    result: 'Velocidade de avanço',
    differs: (by) => `difere ${by}`,
    before: (speed, round) => `${speed} da ronda ${round} ainda vale para esta regulação; cronometre de novo só se a marcha, os pneus ou o piso tiverem mudado.`,
    noDirection: 'qualquer sentido',
    answers: { speed: 'Velocidade média', error: 'Com que certeza', setting: 'Face à regulação', display: 'O visor', water: 'Água a esta velocidade' },
    oneWay: (direction, speed) => `${direction} ${speed}`,
    water: (water) => `Água a esta velocidade ${water},`,
    wanted: (water) => `pretendida ${water}.`,
    byTables: 'Pelas tabelas de bicos: o caudal ainda não foi medido.',
    byOutput: 'Com o caudal medido.',
    over: (distance) => `em ${distance}`
  },

  output: {
    intro: 'Água limpa, pressão de trabalho, TDF à sua rotação. Leia a pressão enquanto pulveriza.',
    method: 'Como se mede o caudal',
    methods: { catch: 'Um copo por bico', standing: 'Reenchimento, parado', course: 'Reenchimento, num trajeto' },
    total: 'Todos os bicos em conjunto',
    result: 'Caudal',
    caught: (n, all) => (n === all ? `Recolhidos todos os ${all} bicos.` : `Recolhidos ${n} de ${all} bicos.`),
    sides: (left, right, off) => `Esquerda ${left}, direita ${right}: esquerda face à direita ${off}.`,
    tables: (flow) => `Pelas tabelas de bicos ${flow}. Cronometre a velocidade para conhecer a água.`,
    water: (water) => `Água ${water},`,
    wanted: (water) => `pretendida ${water}.`,
    longEnough: (closeness, long) => `Para ±${closeness}, pulverize pelo menos ${long}.`,
    percent: (value) => `${String(value).replace('.', ',')} %`,
    lasting: (min, s) => (min === 0 ? `${s} s` : s === 0 ? `${min} min` : `${min} min ${s} s`),
    answers: { output: 'Caudal', error: 'Com que certeza', sides: 'Esquerda face à direita', long: 'Quanto tempo pulverizar', water: 'Água' }
  },

  refill: {
    intro: {
      standing: 'Terreno plano. Encha até uma marca, pulverize parado, volte a encher até à marca com um contador ou um copo graduado.',
      course: 'Encha até uma marca em terreno plano, pulverize ao longo do trajeto marcado à velocidade de trabalho, volte a encher até à marca no mesmo sítio.'
    },
    title: 'pulverizar parado',
    start: 'Bicos abertos: iniciar',
    markEnd: 'Bicos fechados: fim',
    seconds: 'tempo a pulverizar',
    distance: 'distância pulverizada',
    litres: 'reenchido até à marca',
    errors: 'Com que rigor se consegue ler?',
    litresError: 'copo ou contador, ±',
    secondsError: 'cronómetro, ±'
  },

  catches: {
    intro: 'Ventilador desligado, uma mangueira em cada bico, um a seguir ao outro. Enter passa ao seguinte.',
    seconds: 'tempo com o copo',
    unit: 'o copo lê-se em',
    sides: { left: 'Esquerda, de baixo para cima', right: 'Direita, de baixo para cima' },
    jug: (id, unit) => `copo de ${id}, ${unit}`,
    secondsOf: (id) => `tempo de ${id}`,
    ownTime: (id, s) => `tempo de ${id}: ${s} s; tempo próprio`,
    verdicts: { fine: 'bem', low: 'baixo', high: 'alto', unknown: 'incerto' }
  },

  plot: {
    caption: 'Barras: cada bico face à média de todos. Sombreado: dentro da tolerância.',
    wear: 'face à sua tabela à pressão real',
    missing: 'sem recolha',
    one: (id, off, verdict) => `${id} ${off} ${verdict}`,
    summary: (limit, outside) =>
      `Cada bico face à média de todos, tolerância ±${String(limit).replace('.', ',')} %. ${outside.length === 0 ? 'Nenhum fora.' : `Fora: ${outside.join(', ')}.`} Os valores estão ao lado de cada copo.`
  },

  gauges: {
    title: 'Pressão',
    intro: 'Tudo enquanto os bicos pulverizam, menos o primeiro. Deixe vazio o que não tiver.',
    fields: { restBar: 'manómetro, bomba parada', readBar: 'manómetro, a pulverizar', masterBar: 'segundo manómetro ao lado', farBar: 'manómetro no bico mais afastado', oneSideBar: 'manómetro, um lado fechado' },
    at: (pressure) => `Bicos julgados a ${pressure}:`,
    from: { far: 'lida no bico mais afastado.', master: 'lida no manómetro que se sabe estar certo.', gauge: 'lida no manómetro da máquina, que não se comprovou estar certo.', setting: 'como regulada; nada foi lido.' },
    off: (by) => `Manómetro da máquina face ao certo: ${by}`,
    loss: (by, flow) => `Perdido até ao bico mais afastado: ${by} da pressão, ${flow} do seu caudal`,
    oneSide: (by) => `Um lado fechado: ${by}`
  },

  law: {
    title: 'O caudal segue a pressão? Ensaio a duas pressões',
    intro: 'Os mesmos bicos a duas pressões, a segunda pelo menos uma vez e meia a primeira. O expoente deve ser cerca de um meio.',
    fields: { firstBar: 'uma pressão', firstLPerMin: 'caudal a essa pressão', secondBar: 'outra pressão', secondLPerMin: 'caudal à outra' }
  },

  tolerance: {
    title: 'Julgado por',
    names: { strict: 'apertada', normal: 'normal', inspection: 'inspeção' },
    limit: (value, certainty) => `±${value} % (${certainty})`,
    line: (mean, nominal, sides) => `à média ${mean}, à tabela ${nominal}, esquerda a direita ${sides}`,
    note: 'Não foi lido o texto de nenhuma norma para estes valores. Pode alterar cada um em Resultado.'
  },

  result: {
    measured: 'Medido',
    wanted: 'pretendido',
    verdicts: { within: 'dentro da tolerância', 'bad-nozzles': 'litros certos, bicos não', adjust: 'ajustar', 'other-nozzles': 'longe demais', unknown: 'ainda desconhecido' },
    speedFrom: (speed, round) => `Velocidade ${speed}, ronda ${round}.`,
    noSpeedNeeded: 'O próprio trajeto deu a água.',
    flowFrom: (flow, how, round) => `Caudal ${flow} ${how}, ronda ${round}.`,
    by: { catches: 'por copos', standing: 'por reenchimento, parado', course: 'por reenchimento num trajeto' },
    computed: (volume, off) => `A regulação diz ${volume}: medido ${off}.`,
    width: (pattern, width, rate, per100) => `Modo de passagem: ${pattern}. Uma passagem serve ${width}; a regulação faz ${rate} e ${per100}. Se não é assim que conduz, nada do que está acima vale.`,
    remedies: (target) => `Três formas de chegar a ${target}`,
    firstReplace: (nozzles) => `Corrigir primeiro: ${nozzles}. Nenhuma pressão e nenhuma velocidade compensam um bico mau.`,
    shortcutTitle: 'Porque não a pressão em proporção?',
    shortcut: (ratio, off) => `O caudal tem de mudar × ${ratio}. A pressão mudada × ${ratio} deixaria o caudal com um desvio de ${off}, porque o caudal varia com a raiz quadrada da pressão: a pressão tem de mudar com o quadrado.`,
    trail: 'Rondas',
    again: 'Verificar de novo: nova ronda',
    full: 'Esta verificação já tem 50 rondas. Anule ou limpe algumas primeiro.',
    nothing: 'Nada encontrado.',
    taken: 'Passou para a regulação; começou uma nova ronda.',
    prove: { size: 'Monte os bicos, regule a pressão, meça de novo o caudal.', speed: 'Mude a marcha ou a rotação do motor, cronometre de novo.', pressure: 'Regule a pressão com os bicos abertos, meça de novo o caudal.' },
    toSpeed: 'Ir para Velocidade',
    toOutput: 'Ir para Caudal',
    answers: { volume: 'Água medida', error: 'Com que certeza', speed: 'Velocidade de avanço', output: 'Caudal', wanted: 'Água pretendida', off: 'Medida face à pretendida' }
  },

  remedies: {
    reach: { large: 'para correções grandes', moderate: 'para correções moderadas', fine: 'para correções finas' },
    suits: 'adequado a esta diferença',
    notPossible: 'Não é possível:',
    water: 'água',
    droplets: 'gotas',
    dropletsUnknown: 'não está na tabela',
    air: 'ar por metro',
    same: 'como agora',
    rate: 'capacidade de trabalho',
    use: 'Usar e verificar de novo'
  },

  strip: {
    summary: (off, error, adjust, nozzles) =>
      `Água medida face à pretendida: ${off}${error ? `, mais ou menos ${error}` : ''}. Limite mais apertado ±${String(adjust).replace('.', ',')} %, limite mais largo ±${String(nozzles).replace('.', ',')} %.`
  },

  trail: { round: 'ronda', begun: 'iniciada', off: 'desvio', verdict: 'veredicto' },

  stale: {
    stale: 'A regulação foi alterada depois deste ensaio.',
    scaled: 'Estão abertos outros bicos que não os deste ensaio; como são todos iguais, o caudal é convertido pelo seu número.',
    changed: (what) => `Alterado: ${what}. O que foi medido fica com a regulação com que se fez.`,
    again: 'Nova ronda com a regulação atual'
  }
};
