/** Labels of the Strategies station. */
export const strategiesScreen = {
  title: 'Strategies',
  viewsName: 'What is compared',
  views: { block: 'This block', season: 'Season', table: 'A table of blocks' },
  loading: 'One moment …',
  failed: 'This part could not be fetched. Check the connection and open the station again; nothing is lost.'
} as const;
