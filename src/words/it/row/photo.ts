import type { Part } from '../../language.ts';

/** What is said of a canopy in a photograph. */
export const PHOTO: Part = {
  refusals: {
    'photo-flat': 'L’immagine ha una sola luminosità, quindi foglie e sfondo non si distinguono. Scattarla contro il cielo o un telo bianco.',
    'photo-no-bands': 'Non è segnata alcuna fascia di altezza. Segnare il riquadro della chioma.',
    'photo-few-pixels': 'Tra {from} m e {to} m sono stati contati solo {pixels} pixel; ne servono almeno {fewest}. Segnare un riquadro più grande, prendere fasce più alte o un’immagine più grande.',
    'photo-no-width': 'Tra {from} m e {to} m la chioma non ha larghezza. Correggere le sue larghezze, o le altezze del riquadro.',
    'photo-saturated': 'Tra {from} m e {to} m mostrano un vuoto {gaps} pixel; ne servono almeno {fewest} per dire l’area fogliare. Lì le foglie sono troppo dense per questa immagine.',
    'photo-mostly-saturated': '{share} % della sezione mostra troppo pochi vuoti per dire l’area fogliare. Scattare un’immagine più nitida, da più vicino o in una fase precedente.',
    'photo-no-leaf': 'Il riquadro non mostra quasi foglie: {found} m²/m³, e {least} m²/m³ è il minimo che si conserva. Verificare il riquadro e la soglia.',
    'photo-too-dense': 'Il riquadro mostra {found} m²/m³ di foglie, e {most} m²/m³ è il massimo che si conserva. Verificare il riquadro, la soglia e la larghezza della chioma.',
    'photo-not-picture': 'Il file non è un’immagine JPEG, PNG o WebP. Sceglierne una di queste; la maggior parte dei telefoni può salvare o condividere un’immagine come JPEG.',
    'photo-empty': 'Il file è vuoto. Sceglierne un altro.',
    'photo-cut-short': 'L’immagine finisce prima di dire la sua dimensione. Il file è troncato: copiarlo di nuovo.',
    'photo-file-large': 'Il file ha {size} MB; se ne leggono al massimo {most} MB. Salvare l’immagine più piccola.',
    'photo-too-large': 'L’immagine è di {width} × {height} pixel; se ne leggono al massimo {most} milioni. Salvarla più piccola.',
    'photo-too-small': 'L’immagine è di {width} × {height} pixel; servono almeno {least} pixel per verso. Scattarne una più grande.',
    'photo-undecodable': 'L’immagine è danneggiata, o di un tipo che questo browser non legge. Aprirla in un altro programma e salvarla come JPEG.'
  },
  fields: { photo: 'fotografia', 'photo.bands': 'fotografia' },
  formulas: {
    'gap-fraction': 'Frazione di vuoti',
    'leaf-density-by-gaps': 'Densità di area fogliare dai vuoti',
    'section-with-band': 'Sezione fino a questa fascia',
    'leaf-density-with-band': 'Densità media di area fogliare fino a questa fascia'
  },
  symbols: {
    'gap-fraction.P': 'frazione di vuoti',
    'gap-fraction.g': 'pixel che mostrano un vuoto',
    'gap-fraction.n': 'pixel contati',
    'leaf-density-by-gaps.P': 'frazione di vuoti',
    'leaf-density-by-gaps.G': 'parte della sua area che una foglia mostra',
    'leaf-density-by-gaps.C': 'raggruppamento',
    'leaf-density-by-gaps.W': 'percorso attraverso la chioma',
    A0: 'sezione sotto',
    'section-with-band.z': 'altezza della fascia',
    'leaf-density-with-band.z': 'altezza della fascia',
    LADb: 'densità di area fogliare della fascia',
    'leaf-density-with-band.LAD0': 'media sotto'
  },
  assumptions: {
    'photo.projection': { label: 'Foglia che la vista incontra', meaning: 'Parte della sua area che una foglia mostra in media alla fotocamera. Foglie rivolte ugualmente in ogni direzione ne mostrano la metà.' },
    'photo.clumping': { label: 'Raggruppamento delle foglie', meaning: '1 sono foglie disposte a caso. Foglie a gruppi lasciano più vuoti, quindi il fattore vero è sotto 1 e ci sono più foglie di quante ne dica 1.' }
  }
};
