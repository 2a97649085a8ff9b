import { fit } from '#core/fitting/fit.ts';
import { serve } from '../search/worker.ts';

serve(fit);
