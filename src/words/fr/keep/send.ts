import type { sendWords as EN } from '../../en/keep/send.ts';
import type { Translated } from '../../translation.ts';

/** An orchard as a file, by the share sheet, or as a link; and one that comes by a link. */
export const sendWords: Translated<typeof EN> = {
  title: (name) => `Envoyer ${name}`,
  file: 'Comme fichier',
  fileNote: 'Le tout, avec les enregistrements. Qui l’ouvre obtient un verger à lui.',
  share: 'Partager le fichier',
  save: 'Enregistrer le fichier',
  shareFailed: 'Le partage n’a pas pu s’ouvrir : enregistrez plutôt le fichier.',
  link: 'Comme lien',
  linkNote: 'Le lien contient le verger lui-même, après le signe # : aucun hébergeur ne le voit. Qui a le lien peut le lire, et un lien ne se rappelle pas.',
  records: (n) => (n === 1 ? 'avec l’enregistrement et les noms qu’il contient' : `avec les ${n} enregistrements et les noms qu’ils contiennent`),
  copy: 'Copier le lien',
  copied: 'Copié.',
  copyByHand: 'Copiez à la main le texte sélectionné.',
  linkName: 'Lien',
  characters: (n) => `${n} caractères. Certaines messageries coupent les liens de plus de 2 000 ; envoyez alors le fichier.`,
  close: 'Fermer',
  faults: {
    'other-version': 'Ce lien a été fait par une autre version de ce programme et ne peut pas être lu ici. Rechargez la page pour une version plus récente, ou demandez un fichier.',
    'too-long': 'Ce verger est trop grand pour un lien : envoyez-le comme fichier.',
    damaged: 'Ce lien est endommagé, sans doute coupé en route. Redemandez-le, ou demandez un fichier.',
    'unfolds-too-far': 'Ce lien se déplie en plus qu’un verger ne peut contenir et n’a pas été lu plus loin.',
    'no-means': 'Ce navigateur n’a pas les moyens de lire ou de faire de tels liens : utilisez un fichier.'
  },
  tooLongToRead: 'Ce lien est plus long que tous ceux que fait ce programme et n’a pas été lu.',
  offer: 'Un verger venu d’un lien',
  offerNote: 'Il s’ouvre comme un verger à part. Rien de ce qui est gardé ici n’est remplacé.',
  holds: (blocks, machines, records) => `Parcelles : ${blocks}. Machines : ${machines}. Enregistrements : ${records}.`,
  more: (n) => `et ${n} de plus`,
  take: 'L’ouvrir',
  leave: 'Le laisser',
  refused: 'Le lien n’a pas été ouvert ; ce qui était ouvert reste.'
};
