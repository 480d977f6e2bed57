/** What things are called: states of a position, sources of numbers, sources of a length. */
export const stockEn = {
  'source.data-sheet': 'data sheet',
  'source.measured': 'measured',
  'source.person': 'entered by a person',
  'source.example': 'example',
  'source.computed': 'computed',
  'source.uncalibrated': 'uncalibrated',
  'lengthSource.survey': 'path measured on the line',
  'lengthSource.old-belt': 'old belt measured',
  'lengthSource.record': 'last splice record',
} as const;
