import type { strategiesScreen as EN } from '../../en/strategies/screen.ts';
import type { Translated } from '../../translation.ts';

/** Beschriftungen der Station Strategien. */
export const strategiesScreen: Partial<Translated<typeof EN>> = {
  title: 'Strategien',
  viewsName: 'Was verglichen wird',
  views: { block: 'Diese Anlage', season: 'Saison', table: 'Eine Tabelle von Anlagen' },
  loading: 'Einen Augenblick …',
  failed: 'Dieser Teil konnte nicht geholt werden. Die Verbindung prüfen und die Station noch einmal öffnen; nichts ist verloren.'
};
