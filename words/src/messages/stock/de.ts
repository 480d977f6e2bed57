import type { stockEn } from './en.ts';

export const stockDe: Readonly<Record<keyof typeof stockEn, string>> = {
  'source.data-sheet': 'Datenblatt',
  'source.measured': 'gemessen',
  'source.person': 'von Hand eingetragen',
  'source.example': 'Beispiel',
  'source.computed': 'berechnet',
  'source.uncalibrated': 'nicht kalibriert',
  'lengthSource.survey': 'Riemenweg an der Linie gemessen',
  'lengthSource.old-belt': 'alter Riemen gemessen',
  'lengthSource.record': 'letzter Verbindungsnachweis',
};
