import type { checkScreen as EN } from '../../en/headland/check-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the first four steps on the headland. What a fault does to the result is a finding of the engine. */
export const checkScreen: Translated<typeof EN> = {
  items: {
    clean: { name: 'Machine propre', how: 'Cuve, conduites et extérieur rincés.' },
    leaks: { name: 'Pas de fuites', how: 'Pompe en marche, tuyaux et raccords sous pression.' },
    'nozzles-placed': { name: 'Les bonnes buses aux bonnes places', how: 'Type, calibre et côté comme dans le réglage.' },
    filters: { name: 'Filtres propres', how: 'Filtres d’aspiration, de refoulement et de buses.' },
    'nozzles-brushed': { name: 'Buses brossées', how: 'Brosse douce et eau, jamais de fil métallique.' },
    drips: { name: 'Pas de gouttes à la fermeture', how: 'Regardez chaque buse quelques secondes après la coupure.' },
    'gauge-rest': { name: 'Manomètre à zéro au repos', how: 'Pompe arrêtée, pression relâchée.' },
    'gauge-scale': { name: 'Manomètre adapté à la pression', how: 'Pression de travail au milieu du cadran, graduation fine.' },
    agitation: { name: 'L’agitation fonctionne', how: 'La surface bouge pendant que les buses pulvérisent.' },
    guards: { name: 'Protections en place : arbre, ventilateur, courroies', how: 'Regardez tout à l’arrêt.' },
    pto: { name: 'Régime de prise de force juste', how: 'Au compte-tours, au régime moteur du traitement.' },
    'water-only': { name: 'Seulement de l’eau claire en cuve', how: 'Pas de produit avant la fin du contrôle.' },
    protection: { name: 'Équipement de protection porté', how: 'Comme le dit l’étiquette du produit : il y a encore des résidus dans la machine.' },
    watch: { name: 'Chronomètre', how: 'Ou celui d’ici.' },
    tape: { name: 'Mètre ruban', how: 'Et des repères pour les deux bouts.' },
    jug: { name: 'Pot gradué' },
    hoses: { name: 'Tuyaux pour mener la bouillie au pot' },
    gauge: { name: 'Second manomètre', how: 'Reconnu juste.' },
    brush: { name: 'Brosse douce', how: 'Et buses et filtres de rechange.' },
    ribbon: { name: 'Ruban pour la cime' },
    paper: { name: 'Papier hydrosensible' },
    'half-tank': { name: 'Cuve à moitié pleine environ' },
    'fan-on': { name: 'Ventilateur et pompe en marche' },
    'in-alley': { name: 'Dans l’interrang, pas sur la route' },
    'spraying-gear': { name: 'Rapport et régime moteur du traitement' },
    'rolling-start': { name: 'À pleine vitesse avant le premier repère' }
  },

  before: {
    intro: 'Faites une fois le tour de la machine. Un défaut est noté avec son effet sur le résultat.',
    safety: 'Arbre, ventilateur et pression peuvent tuer : regardez et touchez tout à l’arrêt. Eau claire seulement. Portez ce que l’étiquette du produit demande ; les règles locales passent d’abord.',
    walk: 'Tour de la machine',
    tools: 'À emporter',
    progress: (done, all) => `${done} sur ${all}`,
    faults: (n) => (n === 0 ? 'aucun défaut trouvé jusqu’ici' : n === 1 ? '1 défaut' : `${n} défauts`),
    fine: 'bien',
    fault: 'défaut',
    withMe: (name) => `${name} : je l’ai`,
    mark: (name, state) => `${name} : ${state}`
  },

  watch: {
    start: 'Départ',
    markEnd: 'Marquer la fin',
    startOver: 'Recommencer',
    goOn: 'Ce n’était pas un faux départ : continuer',
    dropped: 'Faux départ : rien n’a été ajouté.',
    elapsed: 'Chronomètre',
    notKept: 'Ce navigateur ne garde rien : un rechargement ferait perdre le temps en cours. Ne fermez ni ne rechargez la page.',
    elsewhere: (where) => `Le chronomètre tourne pour ${where}.`,
    what: { run: 'un passage de vitesse', refill: 'le complément', jug: 'un pot' },
    stopIt: 'Abandonner ce temps',
    notCounted: (time, least, most) => `Le chronomètre a tourné ${time} : seul compte de ${least} à ${most}, rien n’a donc été ajouté. Recommencez.`
  },

  speed: {
    intro: (course) => `${course}, aller et retour. Cuve à moitié pleine, ventilateur en marche, à pleine vitesse avant le premier repère.`,
    course: 'distance marquée',
    courses: 'distances usuelles',
    next: (n, direction) => `passage ${n}, ${direction}`,
    run: (n) => `passage ${n}`,
    directions: { out: 'aller', back: 'retour' },
    turn: (n, direction) => `le passage ${n} est un ${direction} ; l’inverser`,
    typed: 'ou saisir un temps, s ou min:s',
    typedAdd: 'Ajouter le passage',
    typedBad: (text, range) => `temps : « ${text.slice(0, 12)} » n’est pas un temps de ${range} s. Saisissez des secondes (62,4) ou des minutes et secondes (1:02,4).`,
    runs: 'Passages',
    none: 'Pas encore de passage. Deux ou trois dans chaque sens font un résultat.',
    most: 'Ce tour contient 50 passages. Supprimez-en un d’abord.',
    remove: (n) => `Supprimer le passage ${n}`,
    terms: 'Comment les passages sont faits',
    yes: 'oui',
    no: 'non',
    display: 'l’affichage du tracteur indique',
    result: 'Vitesse d’avancement',
    differs: (by) => `diffère de ${by}`,
    before: (speed, round) => `${speed} du tour ${round} valent encore pour ce réglage ; ne chronométrez de nouveau que si le rapport, les pneus ou le sol ont changé.`,
    noDirection: 'sens quelconque',
    answers: { speed: 'Vitesse moyenne', error: 'Quelle certitude', setting: 'Par rapport au réglage', display: 'L’affichage', water: 'Eau à cette vitesse' },
    oneWay: (direction, speed) => `${direction} ${speed}`,
    water: (water) => `Eau à cette vitesse ${water},`,
    wanted: (water) => `souhaité ${water}.`,
    byTables: 'D’après les tableaux de buses : le débit n’est pas encore mesuré.',
    byOutput: 'Avec le débit mesuré.',
    over: (distance) => `sur ${distance}`
  },

  output: {
    intro: 'Eau claire, pression de travail, prise de force à son régime. Lisez la pression pendant que la machine pulvérise.',
    method: 'Comment le débit est mesuré',
    methods: { catch: 'Un pot par buse', standing: 'Complément, sur place', course: 'Complément, sur un parcours' },
    total: 'Toutes les buses ensemble',
    result: 'Débit',
    caught: (n, all) => (n === all ? `Les ${all} buses sont mesurées.` : `${n} ${n < 2 ? 'buse mesurée' : 'buses mesurées'} sur ${all}.`),
    sides: (left, right, off) => `Gauche ${left}, droite ${right} : gauche par rapport à droite ${off}.`,
    tables: (flow) => `D’après les tableaux de buses ${flow}. Chronométrez la vitesse pour connaître l’eau.`,
    water: (water) => `Eau ${water},`,
    wanted: (water) => `souhaité ${water}.`,
    longEnough: (closeness, long) => `Pour ±${closeness}, pulvérisez au moins ${long}.`,
    percent: (value) => `${String(value).replace('.', ',')} %`,
    lasting: (min, s) => (min === 0 ? `${s} s` : s === 0 ? `${min} min` : `${min} min ${s} s`),
    answers: { output: 'Débit', error: 'Quelle certitude', sides: 'Gauche par rapport à droite', long: 'Combien de temps pulvériser', water: 'Eau' }
  },

  refill: {
    intro: {
      standing: 'Sol plat. Remplissez jusqu’à un repère, pulvérisez sur place, complétez jusqu’au repère avec un compteur ou un pot gradué.',
      course: 'Remplissez jusqu’à un repère sur sol plat, pulvérisez sur le parcours marqué à la vitesse de travail, complétez là jusqu’au repère.'
    },
    title: 'pulvérisation sur place',
    start: 'Buses ouvertes : départ',
    markEnd: 'Buses fermées : fin',
    seconds: 'temps de pulvérisation',
    distance: 'distance pulvérisée',
    litres: 'complété jusqu’au repère',
    errors: 'Avec quelle précision pouvez-vous le lire ?',
    litresError: 'pot ou compteur, ±',
    secondsError: 'chronomètre, ±'
  },

  catches: {
    intro: 'Ventilateur arrêté, un tuyau sur chaque buse, l’une après l’autre. Entrée passe à la suivante.',
    seconds: 'pot tenu pendant',
    unit: 'le pot se lit en',
    sides: { left: 'Gauche, de bas en haut', right: 'Droite, de bas en haut' },
    jug: (id, unit) => `pot de ${id}, ${unit}`,
    secondsOf: (id) => `${id} tenu pendant`,
    ownTime: (id, s) => `${id} tenu pendant ${s} s ; temps propre`,
    verdicts: { fine: 'bien', low: 'bas', high: 'haut', unknown: 'incertain' }
  },

  plot: {
    caption: 'Barres : chaque buse par rapport à la moyenne de toutes. Ombré : dans la tolérance.',
    wear: 'par rapport à son tableau à la vraie pression',
    missing: 'non mesurée',
    one: (id, off, verdict) => `${id} ${off} ${verdict}`,
    summary: (limit, outside) =>
      `Chaque buse par rapport à la moyenne de toutes, tolérance ±${String(limit).replace('.', ',')} %. ${outside.length === 0 ? 'Aucune en dehors.' : `En dehors : ${outside.join(', ')}.`} Les chiffres sont à côté de chaque pot.`
  },

  gauges: {
    title: 'Pression',
    intro: 'Tout pendant que les buses pulvérisent, sauf le premier. Laissez vide ce que vous n’avez pas.',
    fields: { restBar: 'manomètre, pompe arrêtée', readBar: 'manomètre, en pulvérisant', masterBar: 'second manomètre à côté', farBar: 'manomètre, buse éloignée', oneSideBar: 'manomètre, un côté fermé' },
    at: (pressure) => `Buses jugées à ${pressure} :`,
    from: { far: 'lu à la buse éloignée.', master: 'lu sur le manomètre reconnu juste.', gauge: 'lu sur le manomètre de la machine, non prouvé juste.', setting: 'comme réglé ; rien n’a été lu.' },
    off: (by) => `Manomètre de la machine par rapport au juste : ${by}`,
    loss: (by, flow) => `Perdu jusqu’à la buse éloignée : ${by} de la pression, ${flow} de son débit`,
    oneSide: (by) => `Un côté fermé : ${by}`
  },

  law: {
    title: 'Le débit suit-il la pression ? Essai à deux pressions',
    intro: 'Les mêmes buses à deux pressions, la seconde d’au moins une fois et demie la première. L’exposant doit être d’environ un demi.',
    fields: { firstBar: 'une pression', firstLPerMin: 'débit à celle-ci', secondBar: 'autre pression', secondLPerMin: 'débit à celle-là' }
  },

  tolerance: {
    title: 'Jugé selon',
    names: { strict: 'stricte', normal: 'normale', inspection: 'contrôle' },
    limit: (value, certainty) => `±${value} % (${certainty})`,
    line: (mean, nominal, sides) => `à la moyenne ${mean}, au tableau ${nominal}, gauche à droite ${sides}`,
    note: 'Aucun texte de norme n’a été lu pour celles-ci. Chacune peut être changée sous Résultat.'
  },

  result: {
    measured: 'Mesuré',
    wanted: 'souhaité',
    verdicts: { within: 'dans la tolérance', 'bad-nozzles': 'litres justes, buses non', adjust: 'à ajuster', 'other-nozzles': 'trop éloigné', unknown: 'pas encore connu' },
    speedFrom: (speed, round) => `Vitesse ${speed}, tour ${round}.`,
    noSpeedNeeded: 'Le parcours a donné l’eau lui-même.',
    flowFrom: (flow, how, round) => `Débit ${flow} ${how}, tour ${round}.`,
    by: { catches: 'par pots', standing: 'par complément sur place', course: 'par complément sur un parcours' },
    computed: (volume, off) => `Le réglage dit ${volume} : mesuré ${off}.`,
    width: (pattern, width, rate, per100) => `Mode de passage : ${pattern}. Un passage traite ${width} ; le réglage fait ${rate} et ${per100}. Si vous ne roulez pas ainsi, rien de ce qui précède ne vaut.`,
    remedies: (target) => `Trois voies vers ${target}`,
    firstReplace: (nozzles) => `À remettre en état d’abord : ${nozzles}. Ni pression ni vitesse ne compensent une mauvaise buse.`,
    shortcutTitle: 'Pourquoi pas la pression en proportion ?',
    shortcut: (ratio, off) => `Le débit doit changer de × ${ratio}. Une pression changée de × ${ratio} laisserait le débit faux de ${off}, car le débit varie comme la racine carrée de la pression : la pression doit changer du carré.`,
    trail: 'Tours',
    again: 'Contrôler de nouveau : nouveau tour',
    full: 'Ce contrôle contient 50 tours. Annulez ou effacez-en d’abord.',
    nothing: 'Rien trouvé.',
    taken: 'Repris dans le réglage ; un nouveau tour a commencé.',
    prove: { size: 'Montez les buses, réglez la pression, mesurez de nouveau le débit.', speed: 'Changez de rapport ou de régime moteur, chronométrez de nouveau.', pressure: 'Réglez la pression buses ouvertes, mesurez de nouveau le débit.' },
    toSpeed: 'Aller à Vitesse',
    toOutput: 'Aller à Débit',
    answers: { volume: 'Eau mesurée', error: 'Quelle certitude', speed: 'Vitesse d’avancement', output: 'Débit', wanted: 'Eau souhaitée', off: 'Mesuré par rapport au souhaité' }
  },

  remedies: {
    reach: { large: 'pour de grandes corrections', moderate: 'pour des corrections moyennes', fine: 'pour de petites corrections' },
    suits: 'convient à cet écart',
    notPossible: 'Impossible :',
    water: 'eau',
    droplets: 'gouttes',
    dropletsUnknown: 'pas dans le tableau',
    air: 'air par mètre',
    same: 'comme maintenant',
    rate: 'débit de chantier',
    use: 'Utiliser et contrôler de nouveau'
  },

  strip: {
    summary: (off, error, adjust, nozzles) => `Eau mesurée par rapport à la souhaitée : ${off}${error ? `, à ${error} près` : ''}. Limite étroite ±${String(adjust).replace('.', ',')} %, limite large ±${String(nozzles).replace('.', ',')} %.`
  },

  trail: { round: 'tour', begun: 'commencé', off: 'écart', verdict: 'verdict' },

  stale: {
    stale: 'Le réglage a été changé depuis cet essai.',
    scaled: 'D’autres buses sont ouvertes qu’à cet essai ; comme toutes sont pareilles, le débit est repris d’après leur nombre.',
    changed: (what) => `Changé : ${what}. Ce qui a été mesuré reste avec le réglage qui a servi.`,
    again: 'Nouveau tour avec le réglage actuel'
  }
};
