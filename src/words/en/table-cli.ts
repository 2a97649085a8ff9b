/** What `rowtailor table` says of strategies, products, formats and threads. */
export const tableCli = {
  noLabel: (name: string, known: readonly string[]) => `There is no product "${name}" in the document. ${known.length > 0 ? `Products: ${known.join(', ')}.` : 'It has none.'}`,
  noWater: (why: string) => `No water is applied with this setting, so there are no concentration factors. ${why}`,
  notText: (file: string) => `${file} cannot be read: it is not UTF-8 text.`,
  withoutSetting: '--label needs --setting FILE: the document that holds the product.',
  labelAlone: '--label goes with --strategies.',
  settingAlone: (option: string) => `${option} goes with --spray or --strategies.`,
  notAForm: (form: string, forms: readonly string[]) => `--format is "${form}"; it must be ${forms.join(' or ')}.`,
  notThreads: (text: string, most: number) => `--threads is "${text}"; a whole number, 1 to ${most}, is needed.`,
  parquetFromInput: 'A Parquet file is read from its end and cannot come from standard input: name the file.',
  strategiesNote:
    'Strategies say different things of the same canopy, and none of them is the label. The dose is the label\'s, after the adaptation, floor and maximum that its user stated; the label and local law decide.'
} as const;
