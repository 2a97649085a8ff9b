/** Asked before a file is opened in the place of a document that holds records. */
export const leaveWords = {
  records: (n: number) =>
    `The open document holds ${n} record${n === 1 ? '' : 's'} that ${n === 1 ? 'is' : 'are'} not in this file. Opening the file puts it in the place of the document on this device. ` +
    'Save the document or export its records first. Open the file all the same?'
} as const;
