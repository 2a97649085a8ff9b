import { adviseSpray } from '#core/spray/advice/search.ts';
import { serve } from '../search/worker.ts';

serve(adviseSpray);
