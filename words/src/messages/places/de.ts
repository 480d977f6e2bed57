import type { placesEn } from './en.ts';

export const placesDe: Readonly<Record<keyof typeof placesEn, string>> = {
  'card.title': 'Verbindungskarte',
  'card.revolutions': 'Gelaufen',
  'card.cut.endless': 'Endlos, schlaff',
  'stores.title': 'Bestand',
  'stores.new.badges': 'Abzeichen eintragen',
  'start.begin': 'Eigenes Werk anlegen',
  'start.go-on': 'Mit meinem Werk weitermachen',
  'start.plants': 'Werke auf diesem Gerät',
};
