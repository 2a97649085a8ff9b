import type { AssumptionWords } from '../../words.ts';

const drops = (name: string): AssumptionWords => ({
  label: `Goutte médiane, ${name}`,
  meaning: 'La moitié de la bouillie est en gouttes plus petites. Les classes comparent des buses ; elles n’ont pas de bornes en µm.'
});

/** Every constant of the spray model. */
export const SPRAY_ASSUMPTION_WORDS: Readonly<Record<string, AssumptionWords>> = {
  'spray.projection': { label: 'Feuillage face à la bouillie', meaning: 'Part de la surface foliaire qui fait obstacle, feuilles l’une derrière l’autre déduites. Ajustée à une seule série de vigne ; c’est elle qui fait le plus varier la réponse.' },
  'spray.leaf-beta': { label: 'Contournement d’une feuille', meaning: 'Plus il est grand, plus les petites gouttes suivent l’air autour d’une feuille.' },
  'spray.leaf-size': { label: 'Taille de feuille', meaning: 'Largeur d’une feuille en travers de l’air.' },
  'spray.wood-beta': { label: 'Contournement d’un rameau', meaning: 'Plus il est grand, plus les petites gouttes suivent l’air autour d’un rameau.' },
  'spray.wood-size': { label: 'Taille de rameau', meaning: 'Épaisseur du bois qui arrête les gouttes.' },
  'spray.wood-density': { label: 'Bois d’un arbre nu', meaning: 'Silhouette du bois dans un mètre cube de végétation.' },
  'spray.canopy-drag': { label: 'Traînée de la végétation', meaning: 'Avec quelle force feuilles et bois ralentissent l’air.' },
  'spray.entrainment': { label: 'Air entraîné par un rideau', meaning: 'À quelle vitesse l’air d’une fente entraîne l’air immobile et ralentit.' },
  'spray.round-entrainment': { label: 'Air entraîné par une sortie ronde', meaning: 'À quelle vitesse l’air d’une sortie ronde entraîne l’air immobile et ralentit.' },
  'spray.plume-spread': { label: 'Dispersion du jet d’une buse', meaning: 'Écart type de sa direction, en part de l’angle total du cône.' },
  'spray.shell-share': { label: 'Profondeur de l’enveloppe feuillue', meaning: 'Part extérieure de la demi-largeur où le feuillage est le plus dense.' },
  'spray.core-ratio': { label: 'Feuillage à l’intérieur', meaning: 'Densité foliaire de la partie intérieure rapportée à celle de l’enveloppe.' },
  'spray.cross-wind': { label: 'Vent en travers des rangs', meaning: 'À la cime, venant de gauche. Il courbe l’air dans le dessin. Le modèle ne montre pas ce que le vent fait au dépôt.' },
  'spray.wind-decay': { label: 'Vent perdu dans la végétation', meaning: 'À quelle vitesse le vent diminue de la cime vers le bas.' },
  'spray.delta-t': { label: 'Delta T pour le séchage des gouttes', meaning: 'Thermomètre sec moins mouillé. Plus il est grand, plus vite les gouttes rétrécissent en vol. Là où la météo du jour a été saisie, il en vient, sauf si vous le fixez ici.' },
  'spray.fine-part': { label: 'Partie fine du spectre', meaning: 'Taille de goutte sous laquelle se trouve un dixième de la bouillie, rapportée à la taille médiane.' },
  'spray.non-volatile': { label: 'Ce qui ne s’évapore pas', meaning: 'Part du liquide qui reste quand une goutte a séché, en volume.' },
  'spray.release-speed': { label: 'Vitesse en sortie de buse', meaning: 'Vitesse à laquelle les gouttes quittent la buse.' },
  'spray.rows': { label: 'Rangs traités de chaque côté', meaning: 'Rangs de la parcelle de chaque côté de la machine. Au-delà du dernier, c’est hors de la parcelle.' },
  'spray.vmd-XF': drops('extrêmement fines'),
  'spray.vmd-VF': drops('très fines'),
  'spray.vmd-F': drops('fines'),
  'spray.vmd-M': drops('moyennes'),
  'spray.vmd-C': drops('grossières'),
  'spray.vmd-VC': drops('très grossières'),
  'spray.vmd-XC': drops('extrêmement grossières'),
  'spray.vmd-UC': drops('ultra-grossières'),
  'spray.vmd-unknown': { label: 'Goutte médiane, classe inconnue', meaning: 'Pour une buse dont le tableau n’imprime pas de classe de gouttes.' }
};
