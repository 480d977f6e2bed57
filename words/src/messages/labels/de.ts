import type { labelsEn } from './en.ts';

export const labelsDe: Readonly<Record<keyof typeof labelsEn, string>> = {
  'labels.title': 'Positionsschilder',
  'labels.line': 'Linie',
  'labels.place': 'Ort',
  'labels.belt': 'Riemen',
  'labels.sheet': 'Mit 100 % drucken, an den Marken schneiden · Blatt {sheet} von {sheets}',
  'labels.about':
    'Ein Schild hängt an seiner Position. Gescannt öffnet es dort die Verbindungskarte. Mit 100 % drucken, nicht skalieren.',
  'labels.which': 'Welche Positionen?',
  'labels.all': 'Alle Positionen',
  'labels.single': 'Einzelne wählen',
  'labels.of': '{chosen} von {count}',
  'labels.paper': 'Papier',
  'labels.paper.A4': 'A4',
  'labels.paper.letter': 'US Letter',
  'labels.count':
    '{count, plural, =0 {Kein Schild gewählt} one {# Schild} other {# Schilder}} · {sheets, plural, one {# Blatt} other {# Blätter}}',
  'labels.none-chosen': 'Eine Linie oder eine Position wählen.',
  'labels.no-positions':
    'Es gibt noch keine Positionen. Zuerst eine Linie und ihre Positionen eingeben, dann ihre Schilder drucken.',
  'labels.pdf': 'PDF der Schilder erstellen',
  'labels.working': 'Das PDF entsteht …',
  'labels.stop': 'Abbrechen',
  'labels.stopped': 'Abgebrochen. Es gibt kein PDF.',
  'labels.done': 'Das PDF liegt bei den Downloads.',
  'labels.failed':
    'Das PDF ist nicht entstanden. Seite neu laden und noch einmal drücken, oder weniger Positionen wählen.',
  'labels.print': 'Schilder drucken',
  'labels.print-line': 'Schilder dieser Linie',
  'labels.print-one': 'Schild dieser Position',
  'labels.unknown-line': 'Eine Linie {value} gibt es im Werk {plant} nicht. Linien: {known}.',
  'labels.empty': 'Es gibt keine Position, für die ein Schild zu drucken wäre.',
  'labels.terminal': 'Schilder der Positionen als PDF, mit dem Code, den die App scannt',
  'labels.terminal-file': 'PDF-Datei, die geschrieben wird',
  'labels.terminal-line': 'nur die Positionen dieser Linie; mehrmals möglich',
  'labels.terminal-position': 'nur diese Position; mehrmals möglich',
  'labels.terminal-paper': 'Papier des PDF: a4 oder letter',
  'labels.wrote':
    '{file} geschrieben: {labels, plural, one {# Schild} other {# Schilder}} auf {sheets, plural, one {# Blatt} other {# Blättern}}. Mit 100 % drucken.',
};
