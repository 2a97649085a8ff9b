/** What could not be opened. */
export const unreadWords = {
  file: 'This file was not opened; what was open stays.',
  link: 'The link was not opened; what was open stays.',
  kept: 'What is kept on this device could not be read. It stays as it is; save it as a file to look into it.'
} as const;
