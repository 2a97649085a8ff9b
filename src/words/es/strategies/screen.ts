import type { strategiesScreen as EN } from '../../en/strategies/screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the Strategies station. */
export const strategiesScreen: Translated<typeof EN> = {
  title: 'Estrategias',
  viewsName: 'Qué se compara',
  views: { block: 'Esta parcela', season: 'Temporada', table: 'Una tabla de parcelas' },
  loading: 'Un momento …',
  failed: 'No se pudo obtener esta parte. Compruebe la conexión y abra de nuevo la sección; no se pierde nada.'
};
