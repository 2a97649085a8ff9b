import type { checkScreen as EN } from '../../en/headland/check-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the first four steps on the headland. What a fault does to the result is a finding of the engine. */
export const checkScreen: Translated<typeof EN> = {
  items: {
    clean: { name: 'La máquina está limpia', how: 'Tanque, conducciones y exterior enjuagados.' },
    leaks: { name: 'Sin fugas', how: 'Bomba en marcha, mangueras y racores con presión.' },
    'nozzles-placed': { name: 'Boquillas correctas en su sitio', how: 'Tipo, calibre y lado como en el ajuste.' },
    filters: { name: 'Filtros limpios', how: 'Filtros de aspiración, de impulsión y de boquilla.' },
    'nozzles-brushed': { name: 'Boquillas cepilladas', how: 'Cepillo suave y agua, nunca alambre.' },
    drips: { name: 'Sin goteo al cerrar', how: 'Observe cada boquilla unos segundos después de cerrar.' },
    'gauge-rest': { name: 'Manómetro a cero en reposo', how: 'Bomba parada, sin presión.' },
    'gauge-scale': { name: 'Manómetro adecuado a la presión', how: 'Presión de trabajo en el centro de la esfera, divisiones finas.' },
    agitation: { name: 'La agitación funciona', how: 'La superficie se mueve mientras pulverizan las boquillas.' },
    guards: { name: 'Protecciones puestas: eje, ventilador, correas', how: 'Mire con todo parado.' },
    pto: { name: 'Régimen de la TDF correcto', how: 'Con tacómetro, al régimen del motor usado para pulverizar.' },
    'water-only': { name: 'Solo agua limpia en el tanque', how: 'Ningún producto hasta terminar la comprobación.' },
    protection: { name: 'Equipo de protección puesto', how: 'Como dice la etiqueta del producto: aún hay restos en la máquina.' },
    watch: { name: 'Cronómetro', how: 'O el de aquí.' },
    tape: { name: 'Cinta métrica', how: 'Y marcas para los dos extremos.' },
    jug: { name: 'Jarra graduada' },
    hoses: { name: 'Mangueras para llevar el caldo a la jarra' },
    gauge: { name: 'Segundo manómetro', how: 'Que se sepa correcto.' },
    brush: { name: 'Cepillo suave', how: 'Y boquillas y filtros de repuesto.' },
    ribbon: { name: 'Cinta para la cima del árbol' },
    paper: { name: 'Papel hidrosensible' },
    'half-tank': { name: 'Tanque más o menos a la mitad' },
    'fan-on': { name: 'Ventilador y bomba en marcha' },
    'in-alley': { name: 'En la calle, no en el camino' },
    'spraying-gear': { name: 'Marcha y régimen del motor de pulverizar' },
    'rolling-start': { name: 'A velocidad antes de la primera marca' }
  },

  before: {
    intro: 'Dé una vuelta a la máquina. Cada defecto se anota con lo que hace al resultado.',
    safety: 'Eje, ventilador y presión pueden matar: mire y meta la mano con todo parado. Solo agua limpia. Lleve lo que pide la etiqueta del producto; las normas locales van primero.',
    walk: 'Revisión de la máquina',
    tools: 'Qué llevar',
    progress: (done, all) => `${done} de ${all}`,
    faults: (n) => (n === 0 ? 'ningún defecto hasta ahora' : n === 1 ? '1 defecto' : `${n} defectos`),
    fine: 'bien',
    fault: 'defecto',
    withMe: (name) => `${name}: lo llevo`,
    mark: (name, state) => `${name}: ${state}`
  },

  watch: {
    start: 'Iniciar',
    markEnd: 'Marcar final',
    startOver: 'Empezar de nuevo',
    goOn: 'No fue salida en falso: seguir',
    dropped: 'Salida en falso: no se añadió nada.',
    elapsed: 'Cronómetro',
    notKept: 'Este navegador no guarda nada: al recargar se perdería el tiempo en curso. No cierre ni recargue la página.',
    elsewhere: (where) => `El cronómetro está en marcha para ${where}.`,
    what: { run: 'una pasada de velocidad', refill: 'el rellenado', jug: 'una jarra' },
    stopIt: 'Descartar ese tiempo',
    notCounted: (time, least, most) => `El cronómetro marcó ${time}: solo cuenta de ${least} a ${most}, así que no se añadió nada. Inicie de nuevo.`
  },

  speed: {
    intro: (course) => `${course}, ida y vuelta. Tanque a la mitad, ventilador en marcha, a velocidad antes de la primera marca.`,
    course: 'distancia marcada',
    courses: 'distancias habituales',
    next: (n, direction) => `pasada ${n}, ${direction}`,
    run: (n) => `pasada ${n}`,
    directions: { out: 'ida', back: 'vuelta' },
    turn: (n, direction) => `la pasada ${n} es de ${direction}; invertirla`,
    typed: 'o escriba un tiempo, s o min:s',
    typedAdd: 'Añadir pasada',
    typedBad: (text, range) => `tiempo: «${text.slice(0, 12)}» no es un tiempo de ${range} s. Escriba segundos (62,4) o minutos y segundos (1:02,4).`,
    runs: 'Pasadas',
    none: 'Aún no hay pasadas. Dos o tres en cada sentido dan un resultado.',
    most: 'Esta ronda admite 50 pasadas. Borre una antes.',
    remove: (n) => `Borrar la pasada ${n}`,
    terms: 'Cómo se hacen las pasadas',
    yes: 'sí',
    no: 'no',
    display: 'la pantalla del tractor marca',
    result: 'Velocidad de avance',
    differs: (by) => `difiere un ${by}`,
    before: (speed, round) => `${speed} de la ronda ${round} sigue valiendo para este ajuste; cronometre de nuevo solo si han cambiado marcha, neumáticos o suelo.`,
    noDirection: 'en cualquier sentido',
    answers: { speed: 'Velocidad media', error: 'Seguridad', setting: 'Frente al ajuste', display: 'La pantalla', water: 'Agua a esta velocidad' },
    oneWay: (direction, speed) => `${direction} ${speed}`,
    water: (water) => `Agua a esta velocidad ${water},`,
    wanted: (water) => `deseada ${water}.`,
    byTables: 'Según las tablas de boquillas: el caudal aún no se ha medido.',
    byOutput: 'Con el caudal medido.',
    over: (distance) => `en ${distance}`
  },

  output: {
    intro: 'Agua limpia, presión de trabajo, TDF a su régimen. Lea la presión mientras pulveriza.',
    method: 'Cómo se mide el caudal',
    methods: { catch: 'Una jarra por boquilla', standing: 'Rellenado, en parado', course: 'Rellenado, en un tramo' },
    total: 'Todas las boquillas juntas',
    result: 'Caudal',
    caught: (n, all) => (n === all ? `Recogidas las ${all} boquillas.` : `Recogidas ${n} de ${all} boquillas.`),
    sides: (left, right, off) => `Izquierda ${left}, derecha ${right}: izquierda frente a derecha ${off}.`,
    tables: (flow) => `Según las tablas de boquillas ${flow}. Cronometre la velocidad para conocer el agua.`,
    water: (water) => `Agua ${water},`,
    wanted: (water) => `deseada ${water}.`,
    longEnough: (closeness, long) => `Para ±${closeness} pulverice al menos ${long}.`,
    percent: (value) => `${String(value).replace('.', ',')} %`,
    lasting: (min, s) => (min === 0 ? `${s} s` : s === 0 ? `${min} min` : `${min} min ${s} s`),
    answers: { output: 'Caudal', error: 'Seguridad', sides: 'Izquierda frente a derecha', long: 'Cuánto tiempo pulverizar', water: 'Agua' }
  },

  refill: {
    intro: {
      standing: 'Suelo llano. Llene hasta una marca, pulverice en parado, rellene hasta la marca con un contador o una jarra graduada.',
      course: 'Llene hasta una marca en suelo llano, pulverice en el tramo marcado a la velocidad de trabajo, rellene allí hasta la marca.'
    },
    title: 'pulverizar en parado',
    start: 'Boquillas abiertas: inicio',
    markEnd: 'Boquillas cerradas: final',
    seconds: 'tiempo pulverizado',
    distance: 'distancia pulverizada',
    litres: 'rellenado hasta la marca',
    errors: '¿Con qué precisión puede leerlo?',
    litresError: 'jarra o contador, ±',
    secondsError: 'cronómetro, ±'
  },

  catches: {
    intro: 'Ventilador parado, una manguera en cada boquilla, una tras otra. Intro pasa a la siguiente.',
    seconds: 'tiempo de cada jarra',
    unit: 'la jarra marca en',
    sides: { left: 'Izquierda, desde abajo', right: 'Derecha, desde abajo' },
    jug: (id, unit) => `jarra de ${id}, ${unit}`,
    secondsOf: (id) => `tiempo de ${id}`,
    ownTime: (id, s) => `tiempo de ${id}: ${s} s; tiempo propio`,
    verdicts: { fine: 'bien', low: 'baja', high: 'alta', unknown: 'dudosa' }
  },

  plot: {
    caption: 'Barras: cada boquilla frente a la media de todas. Sombreado: dentro de tolerancia.',
    wear: 'frente a su tabla a la presión real',
    missing: 'sin recoger',
    one: (id, off, verdict) => `${id} ${off} ${verdict}`,
    summary: (limit, outside) =>
      `Cada boquilla frente a la media de todas, tolerancia ±${String(limit).replace('.', ',')} %. ${outside.length === 0 ? 'Ninguna fuera.' : `Fuera: ${outside.join(', ')}.`} Las cifras figuran junto a cada jarra.`
  },

  gauges: {
    title: 'Presión',
    intro: 'Todo mientras pulverizan las boquillas, salvo lo primero. Lo que no tenga, déjelo vacío.',
    fields: { restBar: 'manómetro, bomba en reposo', readBar: 'manómetro, pulverizando', masterBar: 'segundo manómetro al lado', farBar: 'manómetro, boquilla más lejana', oneSideBar: 'manómetro, un lado cerrado' },
    at: (pressure) => `Boquillas juzgadas a ${pressure}:`,
    from: { far: 'leída en la boquilla más lejana.', master: 'leída en el manómetro que se sabe correcto.', gauge: 'leída en el manómetro de la máquina, no comprobado.', setting: 'la del ajuste; no se leyó nada.' },
    off: (by) => `Manómetro de la máquina frente al correcto: ${by}`,
    loss: (by, flow) => `Perdido hasta la boquilla más lejana: ${by} de la presión, ${flow} de su caudal`,
    oneSide: (by) => `Un lado cerrado: ${by}`
  },

  law: {
    title: '¿Sigue el caudal a la presión? Prueba a dos presiones',
    intro: 'Las mismas boquillas a dos presiones, la una al menos una vez y media la otra. El exponente debe ser aproximadamente un medio.',
    fields: { firstBar: 'una presión', firstLPerMin: 'caudal a ella', secondBar: 'otra presión', secondLPerMin: 'caudal a esa' }
  },

  tolerance: {
    title: 'Se juzga con',
    names: { strict: 'estricta', normal: 'normal', inspection: 'inspección' },
    limit: (value, certainty) => `±${value} % (${certainty})`,
    line: (mean, nominal, sides) => `a la media ${mean}, a la tabla ${nominal}, de izquierda a derecha ${sides}`,
    note: 'Para estas no se leyó el texto de ninguna norma. Puede cambiar cada una en Resultado.'
  },

  result: {
    measured: 'Medido',
    wanted: 'deseado',
    verdicts: { within: 'dentro de tolerancia', 'bad-nozzles': 'litros bien, boquillas no', adjust: 'ajustar', 'other-nozzles': 'demasiado lejos', unknown: 'aún sin saber' },
    speedFrom: (speed, round) => `Velocidad ${speed}, ronda ${round}.`,
    noSpeedNeeded: 'El tramo dio el agua directamente.',
    flowFrom: (flow, how, round) => `Caudal ${flow} ${how}, ronda ${round}.`,
    by: { catches: 'con jarras', standing: 'con rellenado en parado', course: 'con rellenado en un tramo' },
    computed: (volume, off) => `El ajuste dice ${volume}: medido ${off}.`,
    width: (pattern, width, rate, per100) => `Recorrido: ${pattern}. Una pasada sirve ${width}; el ajuste hace ${rate} y ${per100}. Si no es así como conduce, nada de lo anterior vale.`,
    remedies: (target) => `Tres maneras de llegar a ${target}`,
    firstReplace: (nozzles) => `Arregle primero: ${nozzles}. Ninguna presión ni velocidad compensa una boquilla mala.`,
    shortcutTitle: '¿Por qué no la presión en proporción?',
    shortcut: (ratio, off) => `El caudal tiene que cambiar × ${ratio}. Una presión cambiada × ${ratio} dejaría el caudal desviado un ${off}, porque el caudal varía con la raíz cuadrada de la presión: la presión tiene que cambiar con el cuadrado.`,
    trail: 'Rondas',
    again: 'Comprobar de nuevo: nueva ronda',
    full: 'Esta comprobación admite 50 rondas. Deshaga o borre algunas antes.',
    nothing: 'No se encontró nada.',
    taken: 'Llevado al ajuste; ha empezado una nueva ronda.',
    prove: { size: 'Monte las boquillas, ajuste la presión, mida de nuevo el caudal.', speed: 'Cambie de marcha o de régimen del motor, cronometre de nuevo.', pressure: 'Ajuste la presión con las boquillas abiertas, mida de nuevo el caudal.' },
    toSpeed: 'Ir a Velocidad',
    toOutput: 'Ir a Caudal',
    answers: { volume: 'Agua medida', error: 'Seguridad', speed: 'Velocidad de avance', output: 'Caudal', wanted: 'Agua deseada', off: 'Medido frente a deseado' }
  },

  remedies: {
    reach: { large: 'para correcciones grandes', moderate: 'para correcciones moderadas', fine: 'para correcciones finas' },
    suits: 'adecuada a esta diferencia',
    notPossible: 'No es posible:',
    water: 'agua',
    droplets: 'gotas',
    dropletsUnknown: 'no está en la tabla',
    air: 'aire por metro',
    same: 'como ahora',
    rate: 'capacidad de trabajo',
    use: 'Usar y comprobar de nuevo'
  },

  strip: {
    summary: (off, error, adjust, nozzles) =>
      `Agua medida frente a la deseada: ${off}${error ? `, con un margen de ${error}` : ''}. Límite estrecho ±${String(adjust).replace('.', ',')} %, límite amplio ±${String(nozzles).replace('.', ',')} %.`
  },

  trail: { round: 'ronda', begun: 'inicio', off: 'diferencia', verdict: 'resultado' },

  stale: {
    stale: 'El ajuste se cambió después de esta prueba.',
    scaled: 'Hay abiertas otras boquillas que en esta prueba; como todas son iguales, el caudal se convierte por su número.',
    changed: (what) => `Cambiado: ${what}. Lo medido queda con el ajuste con el que se hizo.`,
    again: 'Nueva ronda con el ajuste actual'
  }
};
