/** What `rowtailor season` says, in English. */
export const seasonCli = {
  usage: `rowtailor season FILE [--block ID] [--fixed RUNG] [--weather CSV] [--units SYSTEM] [--json]

The season of each block of a document: every rung with its setting, what changes from one to the next, which nozzle is open when,
and water, product and tank fills over all treatments, adapted against one setting for the whole season. Then the canopies that
growth would have between rungs that were measured. FILE - reads standard input.

  --block ID      only the block with this id
  --fixed RUNG    the rung whose setting stands for the whole season; without it, that of the rung with most leaf
  --weather CSV   degree-days for dates between rungs: date, time and temperature_c (or _f), or date with temperature_min_c and
                  temperature_max_c, or with temperature_mean_c; other columns are passed over. A typical year (TMY3) goes by month and day.
  --units         metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --json          everything with the working of every figure, in the engine's units:
                  {"format": "rowtailor-season", "version": 1, "results": [...]}, one result per block
  -h, --help      this text

Exit codes
  0  done
  1  the file was refused, or a rung that is treated could not be worked out, or lines of the weather file were refused
  2  wrong usage, or no such block or rung
  3  a file cannot be read, or is no JSON
`,
  title: (block: string) => `${block}: the season`,
  headings: { rungs: 'Rungs', nozzles: 'Nozzles', changes: 'What changes', totals: 'The season, adapted against one setting', growth: 'Growth between rungs, proposed', weather: 'Weather', notes: 'To mind' },
  columns: {
    rung: '', stage: 'BBCH', date: 'date', treatments: 'treated', volume: 'row volume', leaf: 'LAI', wanted: 'wanted', water: 'sprayed', open: 'open', airNeeded: 'air needed', air: 'air given', loads: 'tank fills',
    nozzle: '', total: '', fixed: 'one setting', adapted: 'adapted', saving: 'saved', share: '', now: 'now', proposed: 'proposed', range: 'range'
  },
  assumed: '*',
  open: 'open',
  shut: 'shut',
  proposedCanopy: 'canopy proposed, not measured',
  fromTo: (from: string, to: string) => `${from} → ${to}`,
  noSource: (rung: string, reason: string) => `${rung}: no proposal. ${reason}`,
  of: (open: number, all: number) => `${open} of ${all}`,
  onlyOne: 'The block has one rung: there is nothing to compare with.',
  badWeather: (file: string) => `${file}: no weather could be read from it.`,
  moreLines: (n: number) => `And ${n} more lines.`
} as const;
