import type { checkScreen as EN } from '../../en/headland/check-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the first four steps on the headland. What a fault does to the result is a finding of the engine. */
export const checkScreen: Translated<typeof EN> = {
  items: {
    clean: { name: 'La macchina è pulita', how: 'Serbatoio, tubazioni ed esterno risciacquati.' },
    leaks: { name: 'Nessuna perdita', how: 'Pompa in funzione, tubi e raccordi in pressione.' },
    'nozzles-placed': { name: 'Ugelli giusti al posto giusto', how: 'Tipo, misura e lato come nella regolazione.' },
    filters: { name: 'Filtri puliti', how: 'Filtri di aspirazione, di mandata e degli ugelli.' },
    'nozzles-brushed': { name: 'Ugelli spazzolati', how: 'Spazzola morbida e acqua, mai filo metallico.' },
    drips: { name: 'Nessun gocciolio alla chiusura', how: 'Osservare ogni ugello per alcuni secondi dopo la chiusura.' },
    'gauge-rest': { name: 'Manometro a zero a riposo', how: 'Pompa ferma, pressione scaricata.' },
    'gauge-scale': { name: 'Manometro adatto alla pressione', how: 'Pressione di lavoro a metà scala, divisioni fini.' },
    agitation: { name: 'L’agitazione funziona', how: 'La superficie si muove mentre gli ugelli irrorano.' },
    guards: { name: 'Protezioni montate: albero, ventilatore, cinghie', how: 'Guardare con tutto fermo.' },
    pto: { name: 'Regime della presa di potenza corretto', how: 'Con contagiri, al regime del motore usato per irrorare.' },
    'water-only': { name: 'Solo acqua pulita nel serbatoio', how: 'Nessun prodotto fino alla fine del controllo.' },
    protection: { name: 'Dispositivi di protezione indossati', how: 'Come dice l’etichetta del prodotto: nella macchina ci sono ancora residui.' },
    watch: { name: 'Cronometro', how: 'O quello qui presente.' },
    tape: { name: 'Metro', how: 'E segni per le due estremità.' },
    jug: { name: 'Caraffa graduata' },
    hoses: { name: 'Tubi per portare il getto nella caraffa' },
    gauge: { name: 'Secondo manometro', how: 'Sicuramente corretto.' },
    brush: { name: 'Spazzola morbida', how: 'E ugelli e filtri di ricambio.' },
    ribbon: { name: 'Nastro per la cima della pianta' },
    paper: { name: 'Cartine idrosensibili' },
    'half-tank': { name: 'Serbatoio pieno circa a metà' },
    'fan-on': { name: 'Ventilatore e pompa in funzione' },
    'in-alley': { name: 'Nell’interfila, non su strada' },
    'spraying-gear': { name: 'Marcia e regime motore di irrorazione' },
    'rolling-start': { name: 'A velocità prima del primo segno' }
  },

  before: {
    intro: 'Fare una volta il giro della macchina. Un difetto si annota con ciò che fa al risultato.',
    safety: 'Albero, ventilatore e pressione possono uccidere: guardare e mettere le mani con tutto fermo. Solo acqua pulita. Indossare quanto chiede l’etichetta del prodotto; le norme locali vengono prima.',
    walk: 'Giro di controllo della macchina',
    tools: 'Da portare',
    progress: (done, all) => `${done} di ${all}`,
    faults: (n) => (n === 0 ? 'finora nessun difetto' : n === 1 ? '1 difetto' : `${n} difetti`),
    fine: 'a posto',
    fault: 'difetto',
    withMe: (name) => `${name}: con me`,
    mark: (name, state) => `${name}: ${state}`
  },

  watch: {
    start: 'Avvia',
    markEnd: 'Segna la fine',
    startOver: 'Ricomincia',
    goOn: 'Non era una falsa partenza: continua',
    dropped: 'Falsa partenza: non è stato aggiunto nulla.',
    elapsed: 'Cronometro',
    notKept: 'Questo browser non conserva nulla: ricaricando si perderebbe il tempo in corso. Non chiudere né ricaricare la pagina.',
    elsewhere: (where) => `Il cronometro è in corso per ${where}.`,
    what: { run: 'una prova di velocità', refill: 'il rabbocco', jug: 'una caraffa' },
    stopIt: 'Rinuncia a quel tempo',
    notCounted: (time, least, most) => `Il cronometro ha segnato ${time}: conta solo da ${least} a ${most}, quindi non è stato aggiunto nulla. Ricominciare.`
  },

  speed: {
    intro: (course) => `${course}, andata e ritorno. Serbatoio a metà, ventilatore acceso, a velocità prima del primo segno.`,
    course: 'distanza segnata',
    courses: 'distanze usuali',
    next: (n, direction) => `prova ${n}, ${direction}`,
    run: (n) => `prova ${n}`,
    directions: { out: 'andata', back: 'ritorno' },
    turn: (n, direction) => `la prova ${n} è in ${direction}; invertire il senso`,
    typed: 'o scrivere un tempo, s o min:s',
    typedAdd: 'Aggiungi prova',
    typedBad: (text, range) => `tempo: «${text.slice(0, 12)}» non è un tempo di ${range} s. Scrivere secondi (62,4) o minuti e secondi (1:02,4).`,
    runs: 'Prove',
    none: 'Ancora nessuna prova. Due o tre per senso danno un risultato.',
    most: 'Questa tornata contiene 50 prove. Eliminarne prima una.',
    remove: (n) => `Elimina la prova ${n}`,
    terms: 'Come si fanno le prove',
    yes: 'sì',
    no: 'no',
    display: 'il display del trattore mostra',
    result: 'Velocità di avanzamento',
    differs: (by) => `differisce di ${by}`,
    before: (speed, round) => `${speed} della tornata ${round} vale ancora per questa regolazione; cronometrare di nuovo solo se sono cambiati marcia, pneumatici o terreno.`,
    noDirection: 'senso qualsiasi',
    answers: { speed: 'Velocità media', error: 'Quanto è sicura', setting: 'Rispetto alla regolazione', display: 'Il display', water: 'Acqua a questa velocità' },
    oneWay: (direction, speed) => `${direction} ${speed}`,
    water: (water) => `Acqua a questa velocità ${water},`,
    wanted: (water) => `voluta ${water}.`,
    byTables: 'Con le tabelle degli ugelli: la portata non è ancora misurata.',
    byOutput: 'Con la portata misurata.',
    over: (distance) => `su ${distance}`
  },

  output: {
    intro: 'Acqua pulita, pressione di lavoro, presa di potenza al suo regime. Leggere la pressione mentre irrora.',
    method: 'Come si misura la portata',
    methods: { catch: 'Una caraffa per ugello', standing: 'Rabbocco, da fermi', course: 'Rabbocco, lungo un tratto' },
    total: 'Tutti gli ugelli insieme',
    result: 'Portata',
    caught: (n, all) => (n === all ? (all === 1 ? 'Misurato l’unico ugello.' : `Misurati tutti i ${all} ugelli.`) : `Misurati ${n} di ${all} ugelli.`),
    sides: (left, right, off) => `Sinistra ${left}, destra ${right}: sinistra rispetto a destra ${off}.`,
    tables: (flow) => `Con le tabelle degli ugelli ${flow}. Cronometrare la velocità per conoscere l’acqua.`,
    water: (water) => `Acqua ${water},`,
    wanted: (water) => `voluta ${water}.`,
    longEnough: (closeness, long) => `Per ±${closeness} irrorare almeno ${long}.`,
    percent: (value) => `${value} %`,
    lasting: (min, s) => (min === 0 ? `${s} s` : s === 0 ? `${min} min` : `${min} min ${s} s`),
    answers: { output: 'Portata', error: 'Quanto è sicura', sides: 'Sinistra rispetto a destra', long: 'Quanto irrorare', water: 'Acqua' }
  },

  refill: {
    intro: {
      standing: 'Terreno in piano. Riempire fino a un segno, irrorare da fermi, rabboccare fino al segno con un contalitri o una caraffa graduata.',
      course: 'Riempire fino a un segno su terreno in piano, irrorare lungo il tratto segnato alla velocità di lavoro, rabboccare fino al segno nello stesso posto.'
    },
    title: 'irrorazione da fermi',
    start: 'Ugelli aperti: avvia',
    markEnd: 'Ugelli chiusi: fine',
    seconds: 'tempo irrorato',
    distance: 'distanza irrorata',
    litres: 'rabboccati fino al segno',
    errors: 'Con quale precisione si può leggere?',
    litresError: 'caraffa o contalitri, ±',
    secondsError: 'cronometro, ±'
  },

  catches: {
    intro: 'Ventilatore spento, un tubo su ogni ugello, uno dopo l’altro. Invio passa al successivo.',
    seconds: 'caraffa tenuta per',
    unit: 'la caraffa segna in',
    sides: { left: 'Sinistra, dal basso', right: 'Destra, dal basso' },
    jug: (id, unit) => `caraffa di ${id}, ${unit}`,
    secondsOf: (id) => `${id} tenuto per`,
    ownTime: (id, s) => `${id} tenuto per ${s} s; tempo proprio`,
    verdicts: { fine: 'a posto', low: 'basso', high: 'alto', unknown: 'incerto' }
  },

  plot: {
    caption: 'Barre: ogni ugello rispetto alla media di tutti. Ombreggiato: entro la tolleranza.',
    wear: 'rispetto alla sua tabella alla pressione vera',
    missing: 'non misurato',
    one: (id, off, verdict) => `${id} ${off} ${verdict}`,
    summary: (limit, outside) =>
      `Ogni ugello rispetto alla media di tutti, tolleranza ±${limit} %. ${outside.length === 0 ? 'Nessuno fuori.' : `Fuori: ${outside.join(', ')}.`} I valori stanno accanto a ogni caraffa.`
  },

  gauges: {
    title: 'Pressione',
    intro: 'Tutto mentre gli ugelli irrorano, salvo il primo. Lasciare vuoto ciò che non si ha.',
    fields: { restBar: 'manometro, pompa ferma', readBar: 'manometro, irrorando', masterBar: 'secondo manometro accanto', farBar: 'manometro all’ugello lontano', oneSideBar: 'manometro, un lato chiuso' },
    at: (pressure) => `Ugelli giudicati a ${pressure}:`,
    from: { far: 'letta all’ugello lontano.', master: 'letta sul manometro sicuramente corretto.', gauge: 'letta sul manometro della macchina, non provato come corretto.', setting: 'come impostata; non è stato letto nulla.' },
    off: (by) => `Manometro della macchina rispetto a quello corretto: ${by}`,
    loss: (by, flow) => `Perdita fino all’ugello lontano: ${by} della pressione, ${flow} della sua portata`,
    oneSide: (by) => `Un lato chiuso: ${by}`
  },

  law: {
    title: 'La portata segue la pressione? Prova a due pressioni',
    intro: 'Gli stessi ugelli a due pressioni, la seconda almeno una volta e mezza la prima. L’esponente dovrebbe essere circa un mezzo.',
    fields: { firstBar: 'una pressione', firstLPerMin: 'portata a quella', secondBar: 'altra pressione', secondLPerMin: 'portata a questa' }
  },

  tolerance: {
    title: 'Giudicato con',
    names: { strict: 'severa', normal: 'normale', inspection: 'controllo funzionale' },
    limit: (value, certainty) => `±${value} % (${certainty})`,
    line: (mean, nominal, sides) => `dalla media ${mean}, dalla tabella ${nominal}, tra sinistra e destra ${sides}`,
    note: 'Per queste non è stato letto il testo di alcuna norma. Ognuna si può cambiare in Risultato.'
  },

  result: {
    measured: 'Misurato',
    wanted: 'voluto',
    verdicts: { within: 'entro la tolleranza', 'bad-nozzles': 'litri giusti, ugelli no', adjust: 'regolare', 'other-nozzles': 'troppo lontano', unknown: 'non ancora noto' },
    speedFrom: (speed, round) => `Velocità ${speed}, tornata ${round}.`,
    noSpeedNeeded: 'Il tratto ha dato da sé l’acqua.',
    flowFrom: (flow, how, round) => `Portata ${flow} ${how}, tornata ${round}.`,
    by: { catches: 'con le caraffe', standing: 'con rabbocco da fermi', course: 'con rabbocco lungo un tratto' },
    computed: (volume, off) => `La regolazione dice ${volume}: misurato ${off}.`,
    width: (pattern, width, rate, per100) => `Schema delle passate: ${pattern}. Una passata serve ${width}; la regolazione fa ${rate} e ${per100}. Se non si lavora così, nulla di quanto sopra vale.`,
    remedies: (target) => `Tre modi per raggiungere ${target}`,
    firstReplace: (nozzles) => `Sistemare prima: ${nozzles}. Nessuna pressione e nessuna velocità compensa un ugello difettoso.`,
    shortcutTitle: 'Perché non la pressione in proporzione?',
    shortcut: (ratio, off) => `La portata deve cambiare di × ${ratio}. Cambiare la pressione di × ${ratio} lascerebbe la portata sbagliata di ${off}, perché la portata va con la radice quadrata della pressione: la pressione deve cambiare del quadrato di quel rapporto.`,
    trail: 'Tornate',
    again: 'Controlla di nuovo: nuova tornata',
    full: 'Questo controllo contiene 50 tornate. Annullarne o cancellarne prima qualcuna.',
    nothing: 'Nessuna osservazione.',
    taken: 'Ripreso nella regolazione; è iniziata una nuova tornata.',
    prove: { size: 'Montare gli ugelli, regolare la pressione, misurare di nuovo la portata.', speed: 'Cambiare marcia o regime motore, cronometrare di nuovo.', pressure: 'Regolare la pressione con gli ugelli aperti, misurare di nuovo la portata.' },
    toSpeed: 'Vai a Velocità',
    toOutput: 'Vai a Portata',
    answers: { volume: 'Acqua misurata', error: 'Quanto è sicura', speed: 'Velocità di avanzamento', output: 'Portata', wanted: 'Acqua voluta', off: 'Misurato rispetto a voluto' }
  },

  remedies: {
    reach: { large: 'per grandi correzioni', moderate: 'per correzioni medie', fine: 'per piccole correzioni' },
    suits: 'adatto a questo scarto',
    notPossible: 'Non possibile:',
    water: 'acqua',
    droplets: 'gocce',
    dropletsUnknown: 'non in tabella',
    air: 'aria per metro',
    same: 'come ora',
    rate: 'capacità di lavoro',
    use: 'Usa e controlla di nuovo'
  },

  strip: {
    summary: (off, error, adjust, nozzles) => `Acqua misurata rispetto a quella voluta: ${off}${error ? `, più o meno ${error}` : ''}. Limite stretto ±${adjust} %, limite largo ±${nozzles} %.`
  },

  trail: { round: 'tornata', begun: 'iniziata', off: 'scarto', verdict: 'giudizio' },

  stale: {
    stale: 'La regolazione è cambiata dopo questa prova.',
    scaled: 'Sono aperti ugelli diversi da quelli di questa prova; essendo tutti uguali, la portata si riporta in base al loro numero.',
    changed: (what) => `Cambiato: ${what}. Ciò che è stato misurato resta con la regolazione con cui è stato fatto.`,
    again: 'Nuova tornata con la regolazione attuale'
  }
};
