import type { recipesEn } from './en.ts';

export const recipesDe: Readonly<Record<keyof typeof recipesEn, string>> = {
  'recipes.about':
    'Welche Werte für diesen Riemen auf dieser Presse? Eines öffnen, seinen Zyklus ansehen und andere Werte ausprobieren.',
  'recipes.none-for-belt':
    'Noch kein Heizprogramm für diesen Riemen. Beim Hersteller nach Temperatur, Druck und Haltezeit fragen; das Datenblatt gilt.',
  'recipes.look-for': 'Werte ausprobieren',
  'recipes.any-press': 'jede Presse',
  'recipes.revision': 'Stand {revision}',
  'recipes.settings': 'oben {top}, unten {bottom}, {dwell}, {pressure}',
  'recipes.missing.recipe':
    'Noch gibt es kein Heizprogramm zum Anfangen. Eines unter Bestand eintragen: vom Datenblatt des Riemens oder von der Presse.',
  'recipes.missing.press': 'Noch gibt es keine Presse. Eine unter Bestand eintragen: ohne Presse kein Zyklus.',
  'recipes.missing.unknown': 'Nichts hier heißt {id}. Zurück zu den Heizprogrammen gehen und eines wählen.',
  'recipes.plugged-in': 'Eingesteckt bei',
  'recipes.elsewhere': 'anderswo',
  'recipes.settings-title': 'Werte zum Ausprobieren',
  'recipes.set.top': 'Obere Heizplatte',
  'recipes.set.bottom': 'Untere Heizplatte',
  'recipes.set.dwell': 'Haltezeit',
  'recipes.set.pressure': 'Druck auf den Riemen',
  'recipes.set.open': 'Öffnen bei höchstens',
  'recipes.set.volts': 'Netz an der Steckdose',
  'recipes.set.air': 'Luft',
  'recipes.set.lead': 'Verlängerung',
  'recipes.was': 'vorher {value}',
  'recipes.less': '{setting}: weniger',
  'recipes.more': '{setting}: mehr',
  'recipes.reset': 'Zurück zum Heizprogramm',
  'recipes.keep': 'Zum Vergleichen festhalten',
  'recipes.keep-instead': 'Stattdessen diesen festhalten',
  'recipes.drop': 'Nicht mehr vergleichen',
  'recipes.compared': 'Dieser Zyklus neben dem festgehaltenen',
  'recipes.now': 'jetzt',
  'recipes.kept': 'festgehalten',
  'recipes.of': 'Von',
  'recipes.grade': 'Verbindung',
  'recipes.two.now': '{line}, jetzt',
  'recipes.two.kept': '{line}, festgehalten',
  'recipes.two.open-now': 'öffnen, jetzt',
  'recipes.two.open-kept': 'öffnen, festgehalten',
  'recipes.two.drawing':
    'Zwei Zyklen übereinander. Jetzt, durchgezogen: höchstens {now} im Riemen, öffnen nach {open}. Festgehalten, gestrichelt: {kept}, öffnen nach {keptOpen}.',
  'recipes.two.fusion':
    'Verbund und Schädigung beider. Jetzt, durchgezogen: Verbund bis {now}. Festgehalten, gestrichelt: {kept}.',
  'recipes.other-belt':
    'Heizprogramm {recipe} gilt für {other}. Für {belt} sind seine Werte nur ein Anfang: berechnet, prüfen.',
  'recipes.other-press':
    'Heizprogramm {recipe} gilt für eine andere Presse. Auf {press} gilt es nicht unverändert: berechnet, prüfen.',
  'recipes.example-press':
    'Beispielpresse, nicht gemessen: {count, plural, one {# Zahl} other {# Zahlen}} von Presse {press} und ihrem Aufbau {count, plural, one {steht} other {stehen}} für das, was niemand eingetragen hat.',
  'recipes.sheet-wins':
    'Das Datenblatt des Riemenherstellers gilt. Berechnet, nicht kalibriert: mit einer Probeverbindung prüfen.',
  'recipes.take-along': 'Mitnehmen',
  'recipes.save.pdf': 'Papier (PDF)',
  'recipes.save.svg': 'Kurve (SVG)',
  'recipes.save.png': 'Kurve (PNG)',
  'recipes.save.csv': 'Zahlen (CSV)',
  'recipes.save.working': 'Die Datei entsteht …',
  'recipes.save.done': 'Die Datei liegt bei den Downloads.',
  'recipes.save.failed': 'Die Datei ist nicht entstanden. Die Seite neu laden und noch einmal drücken.',
  'recipes.rests': 'Worauf es beruht',
  'recipes.open-cycle': 'Presszyklus',
};
