import type { adviceScreen as EN } from '../../en/spray/advice-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the search for better settings. */
export const adviceScreen: Translated<typeof EN> = {
  title: 'De meilleurs réglages ?',
  line: 'Buses, leur orientation, gouttes, air et vitesse dans les limites de la machine',
  intro: 'Cherche des réglages de cette machine qui déposent plus sur les arbres, plus régulièrement, avec moins de pertes, aux litres par hectare d’aujourd’hui ou moins. Rien n’est changé avant que vous le disiez.',
  start: 'Chercher de meilleurs réglages',
  again: 'Chercher de nouveau',
  searching: 'Recherche …',
  part: (done) => `${done} faits`,
  stop: 'Arrêter',
  stopped: 'Arrêté.',
  failed: 'La recherche n’a pas pu tourner ici. Rechargez la page.',
  outdated: 'Le réglage a changé depuis : ce qui est ici est de l’ancien.',
  looked: (settings) => `${settings} réglages examinés.`,
  front: 'Ce qui est possible',
  frontNote: 'Aucun n’est meilleur en tout qu’un autre. Sous chaque chiffre, son écart avec aujourd’hui ; ≈ : pas de différence nette.',
  today: 'aujourd’hui',
  columns: { setting: 'réglage', trees: 'sur les arbres', lost: 'perdu', cv: 'CV', rate: 'débit de chantier' },
  plotTrees: 'sur les arbres →',
  plotLost: 'perdu ↑',
  noClear: 'pas de différence nette',
  plan: (n, names) => (names ? `Réglage ${n} : ${names}` : `Réglage ${n}`),
  names: {
    'most-on-trees': 'le plus sur les arbres',
    'least-lost': 'le moins de pertes',
    'most-even': 'le plus régulier',
    fastest: 'le plus rapide',
    'fewest-changes': 'le moins de changements'
  },
  all: (effects) => `Le tout ensemble ${effects}.`,
  steps: 'Pas à pas',
  volume: (litres) => `Pulvérise ${litres}.`,
  use: 'Utiliser ce réglage',
  useOf: (name) => `Utiliser : ${name}`,
  inUse: 'Réglé maintenant',
  used: (name) => `Réglé : ${name}. Vérifiez rubans et papier avant de traiter une parcelle ainsi.`,
  undo: 'Annuler'
};
