/** An orchard as a file, by the share sheet, or as a link; and one that comes by a link. */
export const sendWords = {
  title: (name: string) => `Send ${name}`,
  file: 'As a file',
  fileNote: 'All of it, with records. Whoever opens it gets an orchard of their own.',
  share: 'Share file',
  save: 'Save file',
  shareFailed: 'The share sheet could not be opened: save the file instead.',
  link: 'As a link',
  linkNote: 'The link holds the orchard itself, behind the # sign: no host gets to see it. Whoever has the link can read it, and a link cannot be called back.',
  records: (n: number) => `with ${n === 1 ? 'the record' : `the ${n} records`} and the names in ${n === 1 ? 'it' : 'them'}`,
  copy: 'Copy link',
  copied: 'Copied.',
  copyByHand: 'Copy the selected text by hand.',
  linkName: 'Link',
  characters: (n: string) => `${n} characters. Some mail programs cut links of more than 2 000; then send the file.`,
  close: 'Close',
  faults: {
    'other-version': 'This link was made by another version of this program and cannot be read here. Reload the page for a newer version, or ask for a file.',
    'too-long': 'This orchard is too large for a link: send it as a file.',
    damaged: 'This link is damaged, most likely cut short on its way. Ask for it again, or for a file.',
    'unfolds-too-far': 'This link unfolds to more than an orchard can hold and was not read further.',
    'no-means': 'This browser has no means to read or make such links: use a file.'
  },
  tooLongToRead: 'This link is longer than any that this program makes and was not read.',
  offer: 'An orchard from a link',
  offerNote: 'It opens as an orchard of its own. Nothing that is kept here is replaced.',
  holds: (blocks: string, machines: number, records: number) => `Blocks: ${blocks}. Machines: ${machines}. Records: ${records}.`,
  more: (n: number) => `and ${n} more`,
  take: 'Open it',
  leave: 'Leave it',
  refused: 'The link was not opened; what was open stays.'
} as const;
