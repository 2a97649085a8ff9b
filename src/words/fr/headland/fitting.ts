import type { Part } from '../../language.ts';

/** What is said of a fitting of nozzles. */
export const FITTING: Part = {
  findings: {
    'fitting-position-off': '{nozzles} {nozzles#est|sont} à plus de {tolerance} de la cible ; la plus éloignée est {worst}, à {off}. Mesurez d’abord {nozzles#son débit|leurs débits} en tournière.',
    'fitting-other-speed': 'Aucune pression n’amène ces calibres à la cible à {present} : roulez à {speed}. L’air par mètre de rang change avec la vitesse.',
    'fitting-nothing-wanted': '{nozzles} {nozzles#prend|prennent} {share} du débit là où rien n’est souhaité. {nozzles#Fermez-la|Fermez-les} d’abord, puis choisissez de nouveau.',
    'fitting-rule-upper-large': 'Pour les grands arbres, une règle publiée veut 65 à 80 % par la moitié supérieure des buses ouvertes ; ici c’est {share}. Les poids ont été suivis, pas la règle.',
    'fitting-rule-upper-low-machine': 'Pour une machine basse dans des arbres de 6 à 7,6 m, une règle publiée veut environ 70 % par les positions du haut ; ici c’est {share}. Les poids ont été suivis, pas la règle.',
    'fitting-rule-two-thirds': 'Une règle de mémoire veut deux tiers par la moitié supérieure des buses ouvertes ; ici c’est {share}. Les poids ont été suivis, pas la règle.',
    'fitting-rule-middle-heavy': 'Pour les agrumes, une règle publiée veut les plus grosses buses au milieu de l’arc ; ici elles n’y sont pas. Les poids ont été suivis, pas la règle.',
    'fitting-rule-proportional': 'Pour les tours devant une haie foliaire, une règle de mémoire attend 50 à 60 % par la moitié supérieure des buses ouvertes ; ici c’est {share}. Les poids ont été suivis, pas la règle.',
    'fitting-sides-unlike': 'Les buses actuelles diffèrent à gauche et à droite, elles ne sont donc pas dans la liste. Retirez « gauche et droite identiques » pour les garder.',
    'fitting-present-unfit': 'Les buses actuelles ne peuvent pas atteindre la cible : à {speed} il leur faudrait {pressure}, et aucune autre vitesse permise n’y aide.'
  },
  refusals: {
    'no-own-weight': 'Aucune position ouverte n’a de poids. Donnez à l’une d’elles au moins un poids supérieur à zéro.',
    'no-leaf-before-nozzles': 'Aucune buse ouverte n’atteint le feuillage, la végétation ne donne donc pas de poids. Ouvrez celles qui font face au feuillage, ou donnez vous-même les poids.',
    'nothing-wanted-here': 'Rien n’est souhaité de {position}.',
    'fitting-speed-apart': 'Les vitesses souhaitées et celles de la machine n’ont rien en commun : au moins {least}, au plus {most}. Élargissez le souhait.',
    'fitting-pressure-apart': 'Les pressions souhaitées et celles de la machine n’ont rien en commun : au moins {least}, au plus {most}. Élargissez le souhait.',
    'fitting-no-size': 'Une position n’a aucun calibre à choisir. Ajoutez des calibres qui peuvent être montés.',
    'fitting-class-unknown': 'Le tableau « {table} » n’imprime pas de classes de gouttes, un tel souhait ne peut donc pas être respecté. Saisissez-les d’après la fiche de la buse, ou retirez le souhait.',
    'fitting-class-unmet': 'Aucun calibre ne donne les classes de gouttes souhaitées à une pression permise. Élargissez les classes, les pressions ou les calibres.',
    'fitting-pressure-tables': 'Sont permis {least} à {most}, mais les tableaux de buses vont de {tableLeast} à {tableMost}. Élargissez les pressions ou choisissez un autre tableau.',
    'fitting-too-little': 'Les plus gros calibres à la plus haute pression et à la plus basse vitesse donnent {most} ; sont souhaités {target}. Ajoutez des calibres plus gros, permettez plus de pression ou une vitesse plus basse, ou souhaitez moins.',
    'fitting-too-much': 'Les plus petits calibres à la plus basse pression et à la plus haute vitesse donnent encore {least} ; sont souhaités {target}. Ajoutez des calibres plus petits, permettez moins de pression ou une vitesse plus haute, fermez des buses, ou souhaitez plus.',
    'fitting-changes-bind': 'Buses à changer, au plus : {changes}. Ainsi rien n’atteint la cible. Permettez plus de changements, ou élargissez la pression ou la vitesse.',
    'fitting-none': 'Aucune combinaison de ces calibres n’atteint la cible dans les limites. Ajoutez des calibres, ou élargissez la pression ou la vitesse.',
    'fitting-cancelled': 'La recherche a été arrêtée.'
  },
  fields: { 'fitting.targetLPerHa': 'volume à atteindre' },
  formulas: {
    'target-flow': 'Cible d’une position',
    'off-target': 'Écart à la cible',
    'profile-match': 'Concordance du profil',
    'top-share': 'Part par la moitié supérieure'
  },
  symbols: {
    qw: 'débit souhaité ici',
    'target-flow.w': 'poids de la position',
    'target-flow.Q': 'débit souhaité',
    'off-target.d': 'écart à la cible',
    'profile-match.M': 'concordance du profil',
    'profile-match.e': 'somme des écarts entre parts et poids',
    St: 'part par la moitié supérieure',
    qt: 'débit par la moitié supérieure'
  },
  assumptions: {
    'fitting.position-tolerance': { label: 'Position hors cible', meaning: 'Une buse plus éloignée que cela de sa cible est nommée. Sert quand les calibres sont choisis dans un catalogue.' },
    'fitting.few-gain': { label: 'Peu de changements apportent', meaning: '« Peu de changements » est le choix qui, avec le moins de changements, apporte cette part du gain de la meilleure concordance.' }
  }
};
