import type { keepBar as EN } from '../../en/keep/bar.ts';
import type { Translated } from '../../translation.ts';

/** How the open document is kept, and what stands in the way. */
export const keepBar: Translated<typeof EN> = {
  status: {
    fresh: '',
    saving: '',
    kept: 'gardé sur cet appareil',
    full: 'Plus de place sur cet appareil : enregistrez le document comme fichier.',
    blocked: 'Impossible de garder le document sur cet appareil : enregistrez-le comme fichier.',
    failed: 'Impossible de garder le document sur cet appareil : enregistrez-le comme fichier.',
    newer: 'Une autre page a enregistré ce verger.',
    gone: 'Ce verger n’est plus gardé sur cet appareil.'
  },
  full: 'Les derniers changements ne sont que sur cette page. Enregistrez-les comme fichier, ou faites de la place en supprimant définitivement des vergers ; un nouvel essai se fait tout seul.',
  blocked: 'Ce navigateur ne laisse aucune page garder des données, comme dans une fenêtre privée ou par un réglage. Le travail n’est que sur cette page et disparaît quand on la ferme.',
  failed: 'Les derniers changements ne sont que sur cette page. Un nouvel essai se fait tout seul.',
  newer: (at) => `Un enregistrement plus récent, du ${at}, est gardé. Rien n’a été écrasé.`,
  newerUnkept: 'Ce que vous avez changé ici depuis n’est que sur cette page.',
  takeNewer: 'Prendre le plus récent',
  dropMine: 'Prendre le plus récent, abandonner le mien',
  keepCopy: 'Garder le mien comme copie',
  gone: 'Il a été supprimé sur une autre page, ou les données de ce site ont été effacées, pendant qu’il était ouvert ici. Le travail n’est que sur cette page.',
  keepAnew: 'Le garder de nouveau',
  saveFile: 'Enregistrer comme fichier',
  orchards: 'Vergers gardés ici',
  clock: (span) => `L’horloge de cet appareil retarde de ${span} sur le dernier enregistrement. Les heures des enregistrements peuvent être en désordre ; rien n’est perdu. Un chronomètre qui tournait alors est faux : chronométrez de nouveau le passage.`,
  rescued: (names) => `Le travail qui n’était pas gardé à la fermeture d’une page est dans un verger à part : ${names}.`,
  version: 'Une nouvelle version de cette page est là. Elle se charge au rechargement.',
  reload: 'Recharger',
  close: 'Fermer',
  later: 'Plus tard',
  fault: 'Quelque chose a échoué dans cette page.',
  faultKept: 'Votre travail est toujours là, et gardé sur cet appareil.',
  faultUnkept: 'Votre travail est toujours là, mais les derniers changements ne sont pas gardés sur cet appareil : enregistrez-le comme fichier avant de recharger.',
  faultMore: (n) => (n < 2 ? `${n} autre ensuite.` : `${n} autres ensuite.`),
  faultDetails: 'Ce que dit le navigateur',
  faultNote: 'Rien n’a été envoyé nulle part. Copiez ce texte si vous voulez le signaler.',
  goOn: 'Continuer',
  broken: 'Cette partie de la page ne peut pas être dessinée.',
  stepBack: 'Annuler le dernier changement',
  drawAgain: 'La redessiner'
};
