/** What things are called: states of a position, sources of numbers, sources of a length. */
export const stockEn = {
  'state.running': 'Running',
  'state.retension-due': 'Re-tension due',
  'state.past-life': 'Past its life',
  'state.torn': 'Torn',
  'state.empty': 'No belt',
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
