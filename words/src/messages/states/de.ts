import type { statesEn } from './en.ts';

export const statesDe: Readonly<Record<keyof typeof statesEn, string>> = {
  'state.running': 'In Betrieb',
  'state.retension-due': 'Nachspannen fällig',
  'state.past-life': 'Lebensdauer überschritten',
  'state.torn': 'Gerissen',
  'state.empty': 'Ohne Riemen',
  'app.find.running': 'läuft in Betrieb',
  'app.find.retension-due': 'nachspannen fällig spannen locker rutscht',
  'app.find.past-life': 'Lebensdauer überschritten alt verschlissen',
  'app.find.torn': 'gerissen kaputt defekt steht Riss verbinden spleißen schweißen vulkanisieren',
  'app.find.empty': 'leer kein Riemen fehlt verbinden spleißen schweißen vulkanisieren',
};
