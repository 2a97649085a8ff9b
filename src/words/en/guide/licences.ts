/** Words around the licences, which stay as they were written. */
export const licenceWords = {
  title: 'Licences',
  intro: 'Rowtailor is free software under the MIT licence. It carries work of others, whose licences follow.',
  noText: 'No licence text came with the package.',
  notBuilt: 'Shown in the built page only.',
  close: 'Close'
} as const;
