import type { placesEn } from './en.ts';

export const placesDe: Readonly<Record<keyof typeof placesEn, string>> = {
  'card.title': 'Verbindungskarte',
  'card.revolutions': 'Gelaufen',
  'card.cut.endless': 'Endlos, schlaff',
  'stores.title': 'Bestand',
  'stores.new.badges': 'Abzeichen eintragen',
};
