import type { Part } from '../../language.ts';

/** Warum gemessene Bäume keine Aufnahme ergeben. */
export const SURVEY: Part = {
  refusals: {
    'survey-no-trees': 'Es ist kein Baum für die Aufnahme übrig. Einen messen, oder einen wieder aufnehmen.',
    'survey-block-smaller': '{trees} Bäume wurden gemessen, aber die Anlage soll {block} haben. Die Zahl der Bäume in der Anlage berichtigen.',
    'survey-group-unmeasured': 'Kein Baum von „{group}“ wurde gemessen. Einen messen, oder die Gruppe weglassen.',
    'survey-group-unsized': 'Wie viele Bäume in „{group}“ stehen, wurde nicht angegeben. Für jede Gruppe angeben, oder für keine.',
    'survey-group-smaller': '{trees} Bäume von „{group}“ wurden gemessen, aber es sollen {block} sein. Die Zahl berichtigen.'
  }
};
