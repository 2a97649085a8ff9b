import { FATES, type SprayBalance, type SprayBand } from '#core/spray/types.ts';

/** Shares to a tenth of a percent: the sum stays within 0.1 of 100. */
const percent = (share: number | undefined): string => (share === undefined ? '' : (share * 100).toFixed(2));
const plain = (v: number | null): string => (v === null ? '' : String(Number(v.toPrecision(5))));
/** Names are the user's own: commas and quotes are quoted, and nothing is left for a spreadsheet to reckon with. */
const cell = (text: string): string => {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};
const table = (rows: readonly (readonly string[])[]): string => rows.map((r) => `${r.map(cell).join(',')}\r\n`).join('');

/** Where the spray goes, line by line: of all nozzles with the band, then of each. `on-trees` and `lost` are sums of the lines above them. */
export function balanceCsv(balance: SprayBalance, band: SprayBand | null): string {
  const all = [
    ...FATES.map((f) => [f, balance.shares[f], band?.shares[f]] as const),
    ['on-trees', balance.onTrees, band?.onTrees] as const,
    ['lost', balance.lost, band?.lost] as const
  ];
  return table([
    ['nozzle', 'where', 'share_percent', 'band_least_percent', 'band_most_percent'],
    ...all.map(([where, share, range]) => ['all', where, percent(share), percent(range?.[0]), percent(range?.[1])]),
    ...balance.perNozzle.flatMap(({ position, shares }) => FATES.map((f) => [position, f, percent(shares[f]), '', '']))
  ]);
}

/** What stays on the trees by height, skirt to top; the depth columns are of the nearest row, from the sprayed face. */
export function profileCsv({ heights }: SprayBalance): string {
  const depths = heights[0]?.byDepth.map((_, i) => `nearest_row_depth_${i + 1}_percent`) ?? [];
  return table([
    ['from_m', 'to_m', 'area_index_m2_per_m2', 'share_percent', 'deposit_ul_per_cm2', ...depths],
    ...heights.map((h) => [plain(h.fromM), plain(h.toM), plain(h.areaIndex), percent(h.share), plain(h.depositUlPerCm2), ...h.byDepth.map(percent)])
  ]);
}
