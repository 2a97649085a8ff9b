import { expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import FindingsList from '../../src/ui/setting/FindingsList.svelte';
import { finding } from '../../src/core/advice/finding.ts';

it('a finding has its severity as a word beside the shape, its sentence, and its source when asked', async () => {
  const screen = await render(FindingsList, {
    system: 'metric',
    findings: [finding('over-top-shut', 'warn', { nozzles: ['L8', 'R8'], lost: { value: 100, unit: '%' } }, ['lwk-nrw']), finding('no-weather', 'note')]
  });
  const items = screen.getByRole('listitem');
  await expect.element(items.first()).toHaveTextContent('mind');
  await expect.element(items.first()).toHaveTextContent('L8 and R8');
  expect(items.elements()).toHaveLength(2);
  await screen.getByText('source').first().click();
  await expect.element(items.first()).toHaveTextContent('Nordrhein-Westfalen');
});
