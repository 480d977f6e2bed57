import type { statesEn } from './en.ts';

export const statesEs: Readonly<Record<keyof typeof statesEn, string>> = {
  'state.running': 'En marcha',
  'state.retension-due': 'Toca retensar',
  'state.past-life': 'Vida superada',
  'state.torn': 'Rota',
  'state.empty': 'Sin correa',
  'app.find.running': 'en marcha funciona',
  'app.find.retension-due': 'retensar tensar floja patina',
  'app.find.past-life': 'vida superada vieja gastada',
  'app.find.torn': 'rota partida rasgada averiada parada empalmar soldar vulcanizar',
  'app.find.empty': 'vacía sin correa falta empalmar soldar vulcanizar',
};
