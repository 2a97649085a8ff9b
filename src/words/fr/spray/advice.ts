import type { CHANGES as EN_CHANGES, EFFECTS as EN_EFFECTS } from '../../en/spray/advice.ts';
import type { Part } from '../../language.ts';
import type { Translated } from '../../translation.ts';
import type { Template } from '../../words.ts';

/** What the search for settings finds and refuses. */
export const SPRAY_ADVICE: Part = {
  findings: {
    'spray-advice-ribbon-decides': 'Cela donne {off} d’air de moins que ne veut la règle de l’interrang, plus que les {tolerance} qui comptent comme accordé. Accrochez d’abord des rubans derrière le rang : cela ne vaut que s’ils bougent encore.',
    'spray-advice-ribbon-unruled': 'Cela donne moins d’air que maintenant, et aucune règle ici ne dit si c’est assez. Accrochez d’abord des rubans derrière le rang : cela ne vaut que s’ils bougent encore.',
    'spray-advice-thinner-bottom': 'Le tiers inférieur de la végétation reçoit {less} de moins de la dose. Si le ravageur est là, ne le faites pas.',
    'spray-advice-thinner-middle': 'Le tiers médian de la végétation reçoit {less} de moins de la dose. Si le ravageur est là, ne le faites pas.',
    'spray-advice-thinner-top': 'Le tiers supérieur de la végétation reçoit {less} de moins de la dose. Si le ravageur est là, ne le faites pas.',
    'spray-advice-no-clear-difference': 'Pas de différence nette avec le réglage d’aujourd’hui : ce qu’il gagne est dans ce que le modèle ne peut pas dire.',
    'spray-advice-remix': 'Les litres changent de {from} à {to} : recalculez la bouillie, et respectez l’eau et la dose de l’étiquette.',
    'spray-advice-understated': 'Ce qu’un air réduit épargne est ici sous-estimé : des essais publiés ont trouvé des pertes bien plus faibles.',
    'spray-advice-check-pressure': 'La pompe tourne avec la prise de force : réglez de nouveau la pression à {pressure} et regardez l’agitation.',
    'spray-advice-speed-unseen': 'Le modèle ne voit aucun effet de la vitesse d’avancement. Chaque mètre de rang reçoit {air} d’air de moins : le ruban décide.',
    'spray-advice-today-stands': 'Rien, dans les limites de la machine, n’est meilleur sur un point sans être pire sur un autre. Le réglage d’aujourd’hui reste.',
    'spray-advice-holds-litres': 'Cela garde l’eau là où elle doit être : {litres} ensuite.',
    'spray-advice-today-stopped': 'Le réglage d’aujourd’hui ne peut pas être utilisé tel quel : voyez les mises en garde. Les plans respectent les limites.',
    'spray-advice-none-clear': 'Aucun réglage trouvé n’est nettement meilleur que celui d’aujourd’hui.',
    'spray-advice-classes-unknown': 'Le tableau d’une buse n’imprime pas de classes de gouttes : un cône creux usuel a été pris à la place. Saisissez les classes d’après sa fiche.',
    'spray-advice-judges': 'Cela classe des réglages ; ce n’est pas une recommandation. Rubans, papier hydrosensible, l’étiquette et les règles locales décident.'
  },
  refusals: {
    'advice-cancelled': 'La recherche a été arrêtée.',
    'advice-too-windy': 'Il y a trop de vent pour traiter : aucun réglage n’est conseillé. Attendez, comme le disent l’étiquette et les règles locales.',
    'advice-inversion': 'Il y a des signes d’inversion, où les gouttes fines restent en l’air : aucun réglage n’est conseillé. Attendez, comme le disent l’étiquette et les règles locales.',
    'advice-drops-dry': 'Les gouttes sèchent trop vite aujourd’hui : aucun réglage n’est conseillé. Attendez, comme le disent l’étiquette et les règles locales.',
    'advice-too-hot': 'Il fait trop chaud pour traiter : aucun réglage n’est conseillé. Attendez, comme le disent l’étiquette et les règles locales.',
    'advice-too-dry': 'L’air est trop sec pour traiter : aucun réglage n’est conseillé. Attendez, comme le disent l’étiquette et les règles locales.',
    'advice-below-label-water': 'Le réglage donne moins d’eau que ne veut l’étiquette, et rien ici ne peut en donner plus. Amenez d’abord l’eau au niveau de l’étiquette.',
    'advice-stopped': 'Un constat dit arrêt, et aucun réglage ne le lève. Corrigez cela d’abord.'
  }
};

/** One change, as the subject of a sentence. */
export const CHANGES: Translated<typeof EN_CHANGES> = {
  shut: 'Fermer {nozzles}',
  open: 'Ouvrir {nozzles}',
  swivel: 'Tourner {nozzles} de {turn}',
  size: 'Monter {to} au lieu de {from} en {nozzles} (gouttes {toClass} au lieu de {fromClass})',
  pressure: 'Régler {to} au lieu de {from}',
  gear: 'Prendre le rapport de ventilateur {to} au lieu de {from}',
  pto: 'Régler la prise de force à {to} au lieu de {from}',
  'gear-and-pto': 'Prendre le rapport de ventilateur {to} à {rpm} au lieu de {from} à {fromRpm}',
  speed: 'Rouler à {to} au lieu de {from}'
};
/** A change of pressure that makes other drops. */
export const PRESSURE_DROPS: Template = ' (gouttes {toClass} au lieu de {fromClass})';

/** What it does, as the rest of the sentence. */
export const EFFECTS: Translated<typeof EN_EFFECTS> = {
  onTrees: { more: 'met {share} de plus de ce qui est pulvérisé sur les arbres', less: 'met {share} de moins de ce qui est pulvérisé sur les arbres' },
  lost: { more: 'perd {points} points de moins', less: 'perd {points} points de plus' },
  evenness: { more: 'répartit plus régulièrement', less: 'répartit moins régulièrement' },
  workRate: { more: 'augmente le débit de chantier de {share}', less: 'réduit le débit de chantier de {share}' },
  none: 'ne fait pas de différence nette'
};
