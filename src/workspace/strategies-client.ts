import { StrategiesClient } from '#store/strategies/client.ts';

export type Client = Pick<StrategiesClient, 'ask' | 'drop'>;

let one: StrategiesClient | null = null;
/** The page has one worker for all that compares strategies; it is started when it is first asked. */
export const strategiesClient = (): Client => (one ??= new StrategiesClient());
