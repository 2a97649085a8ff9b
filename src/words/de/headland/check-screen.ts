import type { TickItem } from '#core/check/types.ts';
import type { checkScreen as EN } from '../../en/headland/check-screen.ts';
import type { Translated } from '../../translation.ts';

interface ItemWords {
  readonly name: string;
  /** Wie man hinsieht, wo der Name es nicht sagt. */
  readonly how?: string;
}

/** Beschriftungen der ersten vier Schritte am Vorgewende. Was ein Mangel mit dem Ergebnis macht, ist ein Befund der Rechnung. */
export const checkScreen: Translated<typeof EN> = {
  items: {
    clean: { name: 'Gerät ist sauber', how: 'Behälter, Leitungen und Außenseite gespült.' },
    leaks: { name: 'Keine Lecks', how: 'Pumpe läuft, Schläuche und Verschraubungen unter Druck.' },
    'nozzles-placed': { name: 'Richtige Düsen am richtigen Platz', how: 'Typ, Größe und Seite wie in der Einstellung.' },
    filters: { name: 'Filter sauber', how: 'Saug-, Druck- und Düsenfilter.' },
    'nozzles-brushed': { name: 'Düsen sauber gebürstet', how: 'Weiche Bürste und Wasser, nie Draht.' },
    drips: { name: 'Kein Nachtropfen', how: 'Jede Düse nach dem Abschalten einige Sekunden beobachten.' },
    'gauge-rest': { name: 'Manometer in Ruhe auf null', how: 'Pumpe aus, Druck abgelassen.' },
    'gauge-scale': { name: 'Manometer passt zum Druck', how: 'Arbeitsdruck in der Mitte der Skala, feine Teilung.' },
    agitation: { name: 'Rührwerk arbeitet', how: 'Oberfläche bewegt sich, während die Düsen spritzen.' },
    guards: { name: 'Schutz vorhanden: Welle, Gebläse, Riemen', how: 'Bei völligem Stillstand ansehen.' },
    pto: { name: 'Zapfwellendrehzahl stimmt', how: 'Mit Drehzahlmesser, bei der Motordrehzahl wie beim Spritzen.' },
    'water-only': { name: 'Nur klares Wasser im Behälter', how: 'Kein Mittel, bis die Prüfung fertig ist.' },
    protection: { name: 'Schutzausrüstung angelegt', how: 'Wie die Gebrauchsanleitung des Mittels sagt: Im Gerät sind noch Rückstände.' },
    watch: { name: 'Stoppuhr', how: 'Oder die hier.' },
    tape: { name: 'Maßband', how: 'Und Marken für beide Enden.' },
    jug: { name: 'Messbecher mit Skala' },
    hoses: { name: 'Schläuche, die den Strahl in den Becher leiten' },
    gauge: { name: 'Zweites Manometer', how: 'Eines, das bekanntermaßen richtig zeigt.' },
    brush: { name: 'Weiche Bürste', how: 'Und Ersatzdüsen und -filter.' },
    ribbon: { name: 'Bändchen für die Baumspitze' },
    paper: { name: 'Wassersensitives Papier' },
    'half-tank': { name: 'Behälter etwa halb voll' },
    'fan-on': { name: 'Gebläse und Pumpe laufen' },
    'in-alley': { name: 'In der Fahrgasse, nicht auf der Straße' },
    'spraying-gear': { name: 'Gang und Motordrehzahl wie beim Spritzen' },
    'rolling-start': { name: 'Auf Geschwindigkeit vor der ersten Marke' }
  } satisfies Record<TickItem, ItemWords> as Record<TickItem, ItemWords>,

  before: {
    intro: 'Einmal um das Gerät gehen. Ein Mangel wird mit seiner Wirkung auf das Ergebnis notiert.',
    safety: 'Welle, Gebläse und Druck können töten: nur bei völligem Stillstand hinsehen und hingreifen. Nur klares Wasser. Tragen, was die Gebrauchsanleitung des Mittels verlangt; örtliche Vorschriften gehen vor.',
    walk: 'Rundgang um das Gerät',
    tools: 'Mitnehmen',
    progress: (done, all) => `${done} von ${all}`,
    faults: (n) => (n === 0 ? 'bisher kein Mangel gefunden' : n === 1 ? '1 Mangel' : `${n} Mängel`),
    fine: 'in Ordnung',
    fault: 'Mangel',
    withMe: (name) => `${name}: dabei`,
    mark: (name, state) => `${name}: ${state}`
  },

  watch: {
    start: 'Start',
    markEnd: 'Ende',
    startOver: 'Neu starten',
    goOn: 'Es war kein Fehlstart: weiterlaufen',
    dropped: 'Fehlstart: Nichts wurde hinzugefügt.',
    elapsed: 'Stoppuhr',
    notKept: 'Dieser Browser speichert nichts: Beim Neuladen ginge die laufende Zeit verloren. Die Seite nicht schließen oder neu laden.',
    elsewhere: (where) => `Die Stoppuhr läuft für ${where}.`,
    what: { run: 'eine Messfahrt', refill: 'die Nachfüllung', jug: 'einen Becher' },
    stopIt: 'Diese Zeit verwerfen',
    notCounted: (time, least, most) => `Die Stoppuhr lief ${time}: Nur ${least} bis ${most} zählen, also wurde nichts hinzugefügt. Noch einmal starten.`
  },

  speed: {
    intro: (course) => `${course}, hin und zurück. Behälter halb voll, Gebläse an, vor der ersten Marke auf Geschwindigkeit.`,
    course: 'abgemessene Strecke',
    courses: 'übliche Strecken',
    next: (n, direction) => `Fahrt ${n}, ${direction}`,
    run: (n) => `Fahrt ${n}`,
    directions: { out: 'hin', back: 'zurück' },
    turn: (n, direction) => `Fahrt ${n} geht ${direction}; umkehren`,
    typed: 'oder Zeit eingeben, s oder min:s',
    typedAdd: 'Fahrt hinzufügen',
    typedBad: (text, range) => `Zeit: „${text.slice(0, 12)}“ ist keine Zeit von ${range} s. Sekunden (62,4) oder Minuten und Sekunden (1:02,4) eingeben.`,
    runs: 'Fahrten',
    none: 'Noch keine Fahrt. Zwei oder drei je Richtung ergeben ein Ergebnis.',
    most: 'Diese Runde fasst 50 Fahrten. Zuerst eine löschen.',
    remove: (n) => `Fahrt ${n} löschen`,
    terms: 'Wie die Fahrten gefahren werden',
    yes: 'ja',
    no: 'nein',
    display: 'Anzeige im Schlepper zeigt',
    result: 'Fahrgeschwindigkeit',
    differs: (by) => `weicht um ${by} ab`,
    before: (speed, round) => `${speed} aus Runde ${round} gelten noch für diese Einstellung; nur neu stoppen, wenn sich Gang, Reifen oder Boden geändert haben.`,
    noDirection: 'je Richtung',
    answers: { speed: 'Mittlere Geschwindigkeit', error: 'Wie sicher', setting: 'Gegen die Einstellung', display: 'Die Anzeige', water: 'Wasser bei dieser Geschwindigkeit' },
    oneWay: (direction, speed) => `${direction} ${speed}`,
    water: (water) => `Wasser bei dieser Geschwindigkeit ${water},`,
    wanted: (water) => `Soll ${water}.`,
    byTables: 'Nach den Düsentabellen: Der Ausstoß ist noch nicht gemessen.',
    byOutput: 'Mit dem gemessenen Ausstoß.',
    over: (distance) => `über ${distance}`
  },

  output: {
    intro: 'Klares Wasser, Arbeitsdruck, Zapfwelle auf Drehzahl. Den Druck während des Spritzens ablesen.',
    method: 'Wie der Ausstoß gemessen wird',
    methods: { catch: 'Ein Becher je Düse', standing: 'Nachfüllen, im Stand', course: 'Nachfüllen, auf der Strecke' },
    total: 'Alle Düsen zusammen',
    result: 'Ausstoß',
    caught: (n, all) => (n === all ? `Alle ${all} Düsen ausgelitert.` : `${n} von ${all} Düsen ausgelitert.`),
    sides: (left, right, off) => `Links ${left}, rechts ${right}: links gegen rechts ${off}.`,
    tables: (flow) => `Nach den Düsentabellen ${flow}. Die Geschwindigkeit stoppen, um das Wasser zu kennen.`,
    water: (water) => `Wasser ${water},`,
    wanted: (water) => `Soll ${water}.`,
    longEnough: (closeness, long) => `Für ±${closeness} mindestens ${long} spritzen.`,
    percent: (value) => `${String(value).replace('.', ',')} %`,
    lasting: (min, s) => (min === 0 ? `${s} s` : s === 0 ? `${min} min` : `${min} min ${s} s`),
    answers: { output: 'Ausstoß', error: 'Wie sicher', sides: 'Links gegen rechts', long: 'Wie lange spritzen', water: 'Wasser' }
  },

  refill: {
    intro: {
      standing: 'Ebener Boden. Bis zu einer Marke füllen, im Stand spritzen, mit Wasserzähler oder Messbecher bis zur Marke nachfüllen.',
      course: 'Auf ebenem Boden bis zu einer Marke füllen, die abgemessene Strecke mit Arbeitsgeschwindigkeit spritzen, dort bis zur Marke nachfüllen.'
    },
    title: 'Spritzen im Stand',
    start: 'Düsen offen: Start',
    markEnd: 'Düsen zu: Ende',
    seconds: 'Spritzdauer',
    distance: 'gespritzte Strecke',
    litres: 'bis zur Marke nachgefüllt',
    errors: 'Wie genau lässt es sich ablesen?',
    litresError: 'Becher oder Zähler, ±',
    secondsError: 'Uhr, ±'
  },

  catches: {
    intro: 'Gebläse aus, ein Schlauch über jede Düse, eine nach der anderen. Die Eingabetaste geht zur nächsten.',
    seconds: 'Becher gehalten',
    unit: 'Becher zeigt in',
    sides: { left: 'Links, von unten', right: 'Rechts, von unten' },
    jug: (id, unit) => `Becher von ${id}, ${unit}`,
    secondsOf: (id) => `${id} gehalten`,
    ownTime: (id, s) => `${id} ${s} s gehalten; eigene Zeit`,
    verdicts: { fine: 'gut', low: 'tief', high: 'hoch', unknown: 'unsicher' }
  },

  plot: {
    caption: 'Balken: jede Düse gegen das Mittel aller. Getönt: innerhalb der Toleranz.',
    wear: 'gegen ihre Tabelle beim wahren Druck',
    missing: 'nicht ausgelitert',
    one: (id, off, verdict) => `${id} ${off} ${verdict}`,
    summary: (limit, outside) =>
      `Jede Düse gegen das Mittel aller, Toleranz ±${String(limit).replace('.', ',')} %. ${outside.length === 0 ? 'Keine außerhalb.' : `Außerhalb: ${outside.join(', ')}.`} Die Zahlen stehen neben jedem Becher.`
  },

  gauges: {
    title: 'Druck',
    intro: 'Alle während des Spritzens, außer dem ersten. Was nicht vorhanden ist, leer lassen.',
    fields: { restBar: 'Manometer, Pumpe in Ruhe', readBar: 'Manometer, beim Spritzen', masterBar: 'zweites Manometer daneben', farBar: 'Manometer an der fernsten Düse', oneSideBar: 'Manometer, eine Seite zu' },
    at: (pressure) => `Düsen beurteilt bei ${pressure}:`,
    from: { far: 'abgelesen an der fernsten Düse.', master: 'abgelesen an einem richtigen Manometer.', gauge: 'abgelesen am Manometer des Geräts, nicht als richtig nachgewiesen.', setting: 'wie eingestellt; nichts wurde abgelesen.' },
    off: (by) => `Manometer des Geräts gegen das richtige: ${by}`,
    loss: (by, flow) => `Verlust bis zur fernsten Düse: ${by} des Drucks, ${flow} ihres Ausstoßes`,
    oneSide: (by) => `Eine Seite zu: ${by}`
  },

  law: {
    title: 'Folgt der Ausstoß dem Druck? Prüfung bei zwei Drücken',
    intro: 'Dieselben Düsen bei zwei Drücken, der eine mindestens anderthalbmal der andere. Der Exponent sollte etwa einhalb sein.',
    fields: { firstBar: 'ein Druck', firstLPerMin: 'Ausstoß dabei', secondBar: 'anderer Druck', secondLPerMin: 'Ausstoß bei diesem' }
  },

  tolerance: {
    title: 'Beurteilt nach',
    names: { strict: 'streng', normal: 'normal', inspection: 'Gerätekontrolle' },
    limit: (value, certainty) => `±${value} % (${certainty})`,
    line: (mean, nominal, sides) => `zum Mittel ${mean}, zur Tabelle ${nominal}, links zu rechts ${sides}`,
    note: 'Dafür wurde der Text keiner Norm gelesen. Jeder Wert ist unter Ergebnis änderbar.'
  },

  result: {
    measured: 'Gemessen',
    wanted: 'Soll',
    verdicts: { within: 'in der Toleranz', 'bad-nozzles': 'Liter richtig, Düsen nicht', adjust: 'nachstellen', 'other-nozzles': 'zu weit daneben', unknown: 'noch nicht bekannt' },
    speedFrom: (speed, round) => `Geschwindigkeit ${speed}, Runde ${round}.`,
    noSpeedNeeded: 'Die Strecke ergab das Wasser selbst.',
    flowFrom: (flow, how, round) => `Ausstoß ${flow} ${how}, Runde ${round}.`,
    by: { catches: 'mit Bechern', standing: 'durch Nachfüllen im Stand', course: 'durch Nachfüllen auf der Strecke' },
    computed: (volume, off) => `Die Einstellung sagt ${volume}: gemessen ${off}.`,
    width: (pattern, width, rate, per100) => `Fahrweise: ${pattern}. Eine Überfahrt behandelt ${width}; die Einstellung schafft ${rate} und ${per100}. Wird anders gefahren, gilt nichts davon.`,
    remedies: (target) => `Drei Wege zu ${target}`,
    firstReplace: (nozzles) => `Zuerst in Ordnung bringen: ${nozzles}. Kein Druck und keine Geschwindigkeit gleicht eine schlechte Düse aus.`,
    shortcutTitle: 'Warum nicht den Druck im selben Verhältnis?',
    shortcut: (ratio, off) => `Der Ausstoß muss sich auf das ${ratio}-Fache ändern. Der Druck auf das ${ratio}-Fache geändert ließe den Ausstoß um ${off} daneben, denn der Ausstoß geht mit der Wurzel des Drucks: Der Druck muss sich mit dem Quadrat davon ändern.`,
    trail: 'Runden',
    again: 'Noch einmal prüfen: neue Runde',
    full: 'Diese Prüfung fasst 50 Runden. Zuerst einige zurücknehmen oder löschen.',
    nothing: 'Nichts gefunden.',
    taken: 'In die Einstellung übernommen; eine neue Runde hat begonnen.',
    prove: { size: 'Die Düsen einbauen, den Druck einstellen, den Ausstoß noch einmal messen.', speed: 'Gang oder Motordrehzahl ändern, noch einmal stoppen.', pressure: 'Den Druck mit offenen Düsen einstellen, den Ausstoß noch einmal messen.' },
    toSpeed: 'Zur Geschwindigkeit',
    toOutput: 'Zum Ausstoß',
    answers: { volume: 'Gemessenes Wasser', error: 'Wie sicher', speed: 'Fahrgeschwindigkeit', output: 'Ausstoß', wanted: 'Soll-Wasser', off: 'Gemessen gegen Soll' }
  },

  remedies: {
    reach: { large: 'für große Berichtigungen', moderate: 'für mittlere Berichtigungen', fine: 'für feine Berichtigungen' },
    suits: 'passt zu dieser Lücke',
    notPossible: 'Nicht möglich:',
    water: 'Wasser',
    droplets: 'Tropfen',
    dropletsUnknown: 'nicht in der Tabelle',
    air: 'Luft je Meter',
    same: 'wie jetzt',
    rate: 'Flächenleistung',
    use: 'Nehmen und noch einmal prüfen'
  },

  strip: {
    summary: (off, error, adjust, nozzles) =>
      `Gemessenes gegen Soll-Wasser: ${off}${error ? `, auf ${error} genau` : ''}. Engere Grenze ±${String(adjust).replace('.', ',')} %, weitere Grenze ±${String(nozzles).replace('.', ',')} %.`
  },

  trail: { round: 'Runde', begun: 'begonnen', off: 'Abweichung', verdict: 'Urteil' },

  stale: {
    stale: 'Die Einstellung wurde seit dieser Prüfung geändert.',
    scaled: 'Es sind andere Düsen offen als bei dieser Prüfung; da alle gleich sind, wird der Ausstoß nach ihrer Zahl übernommen.',
    changed: (what) => `Geändert: ${what}. Was gemessen wurde, bleibt bei der Einstellung, mit der es gemessen wurde.`,
    again: 'Neue Runde mit der jetzigen Einstellung'
  }
};
