import type { stockEn } from './en.ts';

export const stockEs: Readonly<Record<keyof typeof stockEn, string>> = {
  'source.data-sheet': 'hoja de datos',
  'source.measured': 'medido',
  'source.person': 'introducido a mano',
  'source.example': 'ejemplo',
  'source.computed': 'calculado',
  'source.uncalibrated': 'sin calibrar',
  'lengthSource.survey': 'recorrido medido en la línea',
  'lengthSource.old-belt': 'correa vieja medida',
  'lengthSource.record': 'último registro de empalme',
};
