import type { stepsEn } from './en.ts';

export const stepsDe: Readonly<Record<keyof typeof stepsEn, string>> = {
  // Causes to settle before anything is cut.
  'cause.rollers-spin': 'Dreht sich jede Rolle von Hand?',
  'cause.build-up': 'Anbackungen an Scheiben oder Rollen?',
  'cause.sharp-edge': 'Scharfe Kante, die den Riemen berührt?',
  'cause.seized-snub': 'Einschnürrolle fest?',
  'cause.wet-bed': 'Nasse Linie oder Tropfen auf dem Riemen?',
  'cause.keep-torn-piece': 'Gerissenes Stück aufheben und kennzeichnen: es zeigt die Ursache.',
  // What must lie ready before the knife comes out.
  'gather.belt-roll': 'Riemen auf der Rolle',
  'gather.die': 'Stanzmesser',
  'gather.template': 'Schablone',
  'gather.press': 'Heizpresse',
  'gather.lead': 'Leitung, ganz abgerollt',
  'gather.release-cloth': 'Trenngewebe',
  'gather.edge-strips': 'Beilegestreifen in Riemendicke',
  'gather.dummy-pieces': 'Füllstücke für leere Taschen',
  'gather.gloves-glasses': 'Schnittschutz- und Hitzehandschuhe, Schutzbrille',
  'gather.lock-and-tag': 'Schloss und Schild',
  'gather.knife-square-tape': 'Messer mit neuer Klinge, Winkel, Maßband',
  'gather.chalk': 'Kreide',
  'gather.resistance-meter': 'Widerstandsmessgerät',
  // The press stack, bottom first.
  'stack.bottom-plate': 'Untere Heizplatte',
  'stack.template': 'Schablone',
  'stack.belt': 'Riemen mit Beilegestreifen',
  'stack.release-cloth': 'Trenngewebe',
  'stack.press-plate': 'Druckplatte',
  'stack.sensor-lead': 'Fühlerleitung',
  // After the press.
  'inspect.open':
    'Öffnen, wenn beide Anzeigen {open, select, none {50 °C (122 °F)} other {{open}}} oder weniger zeigen.',
  'inspect.lift-out': 'Mit der Schablone herausheben, Klemmen lösen, Trenngewebe abziehen.',
  'inspect.lie-flat': '10 Minuten flach liegen lassen.',
  'inspect.trim-flash': 'Austrieb bündig abschneiden; keinen Faden anschneiden.',
  'inspect.both-faces':
    'Beide Seiten ansehen: Umrisse verschweißt und kaum sichtbar, nichts braun, keine Blasen, keine Stufe.',
  'inspect.straight': 'Gerade: höchstens 2 mm je Meter (0,024 in je Fuß).',
  'inspect.bend-by-hand': 'Kalt von Hand in beide Richtungen über den Radius der kleinsten Scheibe biegen.',
  'inspect.antistatic-resistance': 'Widerstand über die Verbindung messen.',
  // Back to running.
  'restart.tension-three-quarters': 'Auf drei Viertel spannen.',
  'restart.tools-counted': 'Werkzeug zählen.',
  'restart.guards-on': 'Schutzhauben anbringen.',
  'restart.people-clear': 'Alle aus dem Gefahrenbereich.',
  'restart.lock-off': 'Schloss abnehmen.',
  'restart.jog-three-turns': 'Drei Umläufe im Tippbetrieb fahren.',
  'restart.lock-on': 'Schloss wieder anbringen.',
  'restart.final-tension': 'Nach den Messmarken fertig spannen; eine Feder hält die Kraft, während der Riemen kriecht.',
  'restart.unlock': 'Schloss abnehmen, alle weg.',
  'restart.track-outside-guards':
    'Riemenlauf von außerhalb der Schutzhauben einstellen. Keine Handschuhe an drehenden Rollen.',
  'restart.watch-splice': 'Verbindung über jede Scheibe beobachten: leer, beladen und nach einer Stunde.',
  // Parts of the time needed.
  'timePart.isolate': 'Freischalten und Ursache finden',
  'timePart.fetch': 'Alles holen',
  'timePart.prepare-thread': 'Schneiden, stanzen, einfädeln',
  'timePart.mesh-clamp': 'Verzahnen und klemmen',
  'timePart.press': 'In der Heizpresse',
  'timePart.inspect-restart': 'Prüfen, spannen, Lauf einstellen',
  'timePart.alone': 'Wege, wenn allein',
};
