import type { missingEn } from './en.ts';

export const missingDe: Readonly<Record<keyof typeof missingEn, string>> = {
  'missing.die':
    'Stanzmesser nicht bekannt. Fingerteilung und Fingerlänge am Stanzmesser ablesen und mit dem Riemen vergleichen; in den Werksdaten eintragen.',
  'missing.template':
    'Schablone nicht bekannt. Die Tasche muss so breit wie der Riemen und so tief wie der Riemen dick sein. Beides mit dem Messschieber messen.',
  'missing.press': 'Heizpresse nicht bekannt. Name, Plattengröße und Datum der letzten Prüfung an der Presse ablesen.',
  'missing.recipe':
    'Kein Heizprogramm für diesen Riemen auf dieser Presse. Temperatur, Druck und Haltezeit beim Riemenhersteller erfragen. Nicht raten, kein Heizprogramm ungeprüft von einer anderen Presse übernehmen.',
  'missing.roll':
    'Keine Riemenrolle dieses Typs und dieser Breite bekannt. Im Lager nachsehen; Charge und Breite ablesen, Rest messen.',
  'missing.path':
    'Riemenführung nicht bekannt, deshalb keine Zeichnung. Alte Führung fotografieren, bevor der Riemen herauskommt; Linie nach den Aufmaßfragen messen.',
  'missing.take-up-stroke':
    'Spannweg nicht bekannt. Weg der Spannvorrichtung vom losen bis zum gespannten Anschlag messen.',
  'missing.take-up-position':
    'Stellung der Spannvorrichtung nicht vermerkt. Vor dem Lösen vom losen Anschlag aus messen und aufschreiben.',
  'missing.drive':
    'Keine Scheibe ist als Antrieb eingetragen. Nachsehen, welche der Motor dreht, und ihre Aufgabe eintragen.',
  'missing.neutral-line':
    'Neutrale Faser des Riemens nicht bekannt; halbe Dicke angenommen. Im Datenblatt des Riemenherstellers nachsehen.',
  'missing.press-check':
    'Datum der letzten Pressenprüfung nicht bekannt. Plakette an der Presse suchen und Datum eintragen.',
  'missing.dry-data':
    'Trockenzeit und -temperatur dieses Riemens nicht bekannt. Riemen von versiegelter Rolle nehmen oder im Datenblatt nachsehen.',
  'missing.data-sheet':
    'Welches Datenblatt zu diesem Riemen gehört, ist nicht eingetragen. Vor dem Schneiden Dicke, kleinste Scheibe und Dehnung mit dem Blatt des Herstellers vergleichen; das Datenblatt gilt.',
  'missing.loop-length':
    'Endloslänge nicht bekannt. Alten Riemen schlaff und flach auslegen und von Spitze bis Grund messen; fehlt er, Linie nach den Aufmaßfragen messen.',
};
