import type { CHANGES as EN_CHANGES, EFFECTS as EN_EFFECTS } from '../../en/spray/advice.ts';
import type { Part } from '../../language.ts';
import type { Translated } from '../../translation.ts';
import type { Template } from '../../words.ts';

/** What the search for settings finds and refuses. */
export const SPRAY_ADVICE: Part = {
  findings: {
    'spray-advice-ribbon-decides': 'Questo dà {off} di aria in meno di quanto vuole la regola dell’interfila, più della tolleranza, {tolerance}. Appendere prima nastri dietro il filare: vale solo se si muovono ancora.',
    'spray-advice-ribbon-unruled': 'Questo dà meno aria di ora, e qui non c’è una regola che dica se basta. Appendere prima nastri dietro il filare: vale solo se si muovono ancora.',
    'spray-advice-thinner-bottom': 'Il terzo inferiore della chioma riceve {less} in meno della dose. Se l’organismo nocivo sta lì, rinunciare.',
    'spray-advice-thinner-middle': 'Il terzo centrale della chioma riceve {less} in meno della dose. Se l’organismo nocivo sta lì, rinunciare.',
    'spray-advice-thinner-top': 'Il terzo superiore della chioma riceve {less} in meno della dose. Se l’organismo nocivo sta lì, rinunciare.',
    'spray-advice-no-clear-difference': 'Nessuna differenza chiara dalla regolazione di oggi: ciò che guadagna sta entro quanto il modello non può dire.',
    'spray-advice-remix': 'I litri cambiano da {from} a {to}: ricalcolare la miscela, e rispettare l’acqua e la dose di etichetta.',
    'spray-advice-understated': 'Ciò che meno aria fa risparmiare qui è sottostimato: le prove pubblicate hanno trovato perdite molto più basse.',
    'spray-advice-check-pressure': 'La pompa gira con la presa di potenza: riportare la pressione a {pressure} e guardare l’agitazione.',
    'spray-advice-speed-unseen': 'Il modello non vede alcun effetto della velocità di avanzamento. Ogni metro di filare riceve {air} di aria in meno: decide il nastro.',
    'spray-advice-today-stands': 'Nulla entro i limiti della macchina è migliore in una cosa senza essere peggiore in un’altra. Resta la regolazione di oggi.',
    'spray-advice-holds-litres': 'Questo tiene l’acqua dove deve essere: poi {litres}.',
    'spray-advice-today-stopped': 'La regolazione di oggi non si può usare così com’è: vedere le avvertenze. Le proposte rispettano i limiti.',
    'spray-advice-none-clear': 'Nessuna regolazione trovata è chiaramente migliore di quella di oggi.',
    'spray-advice-classes-unknown': 'La tabella di un ugello non stampa classi di gocce: per esso si è preso un cono vuoto usuale. Inserire le classi dalla sua scheda.',
    'spray-advice-judges': 'Questo ordina regolazioni; non è una raccomandazione. Decidono i nastri, le cartine idrosensibili, l’etichetta e le norme locali.'
  },
  refusals: {
    'advice-cancelled': 'La ricerca è stata fermata.',
    'advice-too-windy': 'C’è troppo vento per irrorare: non si consiglia alcuna regolazione. Attendere, come dicono l’etichetta e le norme locali.',
    'advice-inversion': 'Ci sono segni di inversione termica, in cui le gocce fini restano sospese: non si consiglia alcuna regolazione. Attendere, come dicono l’etichetta e le norme locali.',
    'advice-drops-dry': 'Oggi le gocce si asciugano troppo in fretta: non si consiglia alcuna regolazione. Attendere, come dicono l’etichetta e le norme locali.',
    'advice-too-hot': 'Fa troppo caldo per irrorare: non si consiglia alcuna regolazione. Attendere, come dicono l’etichetta e le norme locali.',
    'advice-too-dry': 'L’aria è troppo secca per irrorare: non si consiglia alcuna regolazione. Attendere, come dicono l’etichetta e le norme locali.',
    'advice-below-label-water': 'La regolazione dà meno acqua di quanta ne vuole l’etichetta, e nulla qui può darne di più. Portare prima l’acqua al valore di etichetta.',
    'advice-stopped': 'Un’osservazione dice di fermarsi, e nessuna regolazione la toglie. Sistemare prima quella.'
  }
};

/** One change, as the subject of a sentence. */
export const CHANGES: Translated<typeof EN_CHANGES> = {
  shut: 'Chiudere {nozzles}',
  open: 'Aprire {nozzles}',
  swivel: 'Orientare {nozzles} di {turn}',
  size: 'Montare {to} invece di {from} in {nozzles} (gocce {toClass} invece di {fromClass})',
  pressure: 'Regolare {to} invece di {from}',
  gear: 'Usare la marcia del ventilatore {to} invece di {from}',
  pto: 'Portare la presa di potenza a {to} invece di {from}',
  'gear-and-pto': 'Usare la marcia del ventilatore {to} a {rpm} invece di {from} a {fromRpm}',
  speed: 'Andare a {to} invece di {from}'
};
/** A change of pressure that makes other drops. */
export const PRESSURE_DROPS: Template = ' (gocce {toClass} invece di {fromClass})';

/** What it does, as the rest of the sentence. */
export const EFFECTS: Translated<typeof EN_EFFECTS> = {
  onTrees: { more: 'porta sulle piante {share} in più di ciò che si irrora', less: 'porta sulle piante {share} in meno di ciò che si irrora' },
  lost: { more: 'perde {points} punti in meno', less: 'perde {points} punti in più' },
  evenness: { more: 'lo distribuisce in modo più uniforme', less: 'lo distribuisce in modo meno uniforme' },
  workRate: { more: 'alza la capacità di lavoro di {share}', less: 'abbassa la capacità di lavoro di {share}' },
  none: 'non fa alcuna differenza chiara'
};
