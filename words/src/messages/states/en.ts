/** States of a position, and the words people search them by. */
export const statesEn = {
  'state.running': 'Running',
  'state.retension-due': 'Re-tension due',
  'state.past-life': 'Past its life',
  'state.torn': 'Torn',
  'state.empty': 'No belt',
  'app.find.running': 'running runs going ok',
  'app.find.retension-due': 're-tension due tension slack slipping',
  'app.find.past-life': 'past life old worn',
  'app.find.torn': 'torn broken ripped snapped failed stopped down splice weld vulcanise vulcanize',
  'app.find.empty': 'empty no belt missing splice weld vulcanise vulcanize',
} as const;
