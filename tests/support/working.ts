import type { Figure, Given } from '#core/working/answer.ts';

/** All figures and given values that stand in some data of the engine and under the figures in it, each once. */
export function workingOf(data: unknown): { readonly figures: readonly Figure[]; readonly givens: readonly Given[] } {
  const seen = new Set<object>();
  const figures: Figure[] = [];
  const givens: Given[] = [];
  const walk = (x: unknown): void => {
    if (typeof x !== 'object' || x === null || seen.has(x)) return;
    seen.add(x);
    if ('kind' in x && x.kind === 'figure') {
      figures.push(x as Figure);
      walk((x as Figure).inputs);
    } else if ('kind' in x && x.kind === 'given') givens.push(x as Given);
    else if (x instanceof Map) x.forEach(walk);
    else Object.values(x).forEach(walk);
  };
  walk(data);
  return { figures, givens };
}

/** What is wrong with the working of some data: units that are not the formula's, inputs that it does not name, a value that it does not give. */
export function faultsOf(data: unknown): string[] {
  return workingOf(data).figures.flatMap(({ formula: f, unit, inputs, value }) => {
    const sum = f.expression.startsWith('sum of ');
    const symbols = Object.keys(inputs);
    return [
      ...(unit === f.unit ? [] : [`${f.id} in ${unit}`]),
      ...symbols.filter((symbol) => inputs[symbol]!.unit !== (sum ? f.unit : f.inputs[symbol])).map((symbol) => `${f.id}: ${symbol} in ${inputs[symbol]!.unit}`),
      ...(sum || symbols.sort().join() === Object.keys(f.inputs).sort().join() ? [] : [`${f.id} of ${symbols.join()}`]),
      ...(f.compute(Object.fromEntries(symbols.map((symbol) => [symbol, inputs[symbol]!.value]))) === value ? [] : [`${f.id}: ${value}`])
    ];
  });
}

/** Where the given values come from, as `path unit certainty`, without repeats. Assumptions are left out: they name themselves. */
export const originsOf = (data: unknown): string[] =>
  [...new Set(workingOf(data).givens.filter((g) => g.assumption === undefined).map((g) => `${g.path ?? `(${g.sources?.join() ?? 'from nowhere'})`} ${g.unit} ${g.certainty}`))].sort();
