import type { refusalsEn } from './en.ts';

export const refusalsDe: Readonly<Record<keyof typeof refusalsEn, string>> = {
  'limits.between': '{min} bis {max}',
  'limits.whole': 'eine ganze Zahl',
  'limits.finite': 'eine endliche Zahl',
  'limits.and': '{first}, {second}',
  'refusal.unknown': 'damit lässt sich nicht rechnen ({details}). Diesen Wert prüfen und erneut versuchen.',
  // Reading the input.
  'refusal.not-json': 'kein JSON: Lesen endet in Zeile {line}, Spalte {column}, bei „{found}“. Dort berichtigen.',
  'refusal.too-large': '{value} erhalten, gelesen werden höchstens {max}. Weniger auf einmal senden.',
  'refusal.wrong-type':
    '„{value}“ erhalten, nötig ist {expected, select, object {ein Objekt} array {eine Liste} string {ein Text} boolean {true oder false} tuple {eine Liste} other {{expected}}}. Form berichtigen.',
  'refusal.missing-field': 'dieses Feld fehlt. Ergänzen.',
  'refusal.unknown-field':
    'Feld „{field}“ ist nicht bekannt.{meant, select, none {} other { Gemeint ist vielleicht „{meant}“.}} Namen berichtigen oder Feld entfernen.',
  'refusal.not-one-of': '„{value}“ erhalten, erlaubt sind: {allowed}. Eines davon verwenden.',
  'refusal.not-a-number': '„{value}“ erhalten, nötig ist eine Zahl. Ziffern ohne Einheit eingeben.',
  'refusal.not-finite': '{value} erhalten, nötig ist eine endliche Zahl. Eine Zahl eingeben.',
  'refusal.out-of-range': '{value} erhalten, erlaubt ist {allowed}. Wert berichtigen.',
  'refusal.too-few': '{count} Einträge erhalten, erlaubt ist {allowed}. Fehlende ergänzen.',
  'refusal.too-many': '{count} Einträge erhalten, erlaubt ist {allowed}. Einige entfernen.',
  'refusal.no-result': 'diese Werte zusammen ergeben keine endliche Zahl. Auf Null oder verwechselte Einheiten prüfen.',
};
