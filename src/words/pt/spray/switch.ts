import type { spraySwitch as EN } from '../../en/spray/switch.ts';
import type { Translated } from '../../translation.ts';

export const spraySwitch: Translated<typeof EN> = {
  label: 'Pulverização',
  failed: 'Não foi possível carregar o modelo de pulverização. Carregue a página de novo.'
};
