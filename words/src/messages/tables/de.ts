import type { tablesEn } from './en.ts';

/** Sentences about tables that are taken in and given out, and about everything as one file. */
export const tablesDe: Readonly<Record<keyof typeof tablesEn, string>> = {
  'tables.open': 'Tabelle einlesen oder ausgeben',
  'tables.title': '{kind} als Tabelle',
  'tables.in': 'Tabelle einlesen',
  'tables.in.help':
    'Eine CSV- oder XLSX-Datei mit Kopfzeile; bei einer Arbeitsmappe das erste Blatt. Neue Zeilen kommen hinzu, Zeilen mit bekanntem Kurznamen ändern ihn, entfernt wird nichts. Spalten, die fehlen, bleiben wie sie sind.',
  'tables.in.before': 'Alles ist zu sehen, bevor es übernommen wird.',
  'tables.choose': 'Datei wählen',
  'tables.choose.other': 'Andere Datei wählen',
  'tables.stage.opening': 'Die Datei wird geöffnet …',
  'tables.stage.unpacking': 'Die Arbeitsmappe wird entpackt …',
  'tables.stage.checking': 'Jede Zeile wird gegen das Werk gehalten …',
  'tables.stage.step': 'Schritt {step} von {of}',
  'tables.stop': 'Abbrechen',
  'tables.stopped': 'Abgebrochen. Nichts hat sich geändert.',
  'tables.found': '{rows, plural, one {# Zeile} other {# Zeilen}} in {file}',
  'tables.added': 'neu',
  'tables.changed': 'geändert',
  'tables.unchanged': 'unverändert',
  'tables.wrong': 'nicht übernehmbar',
  'tables.more-names': 'und {count} weitere',
  'tables.nothing': 'Alles darin ist schon da. Es gibt nichts zu übernehmen.',
  'tables.empty': 'Unter den Überschriften stehen keine Zeilen. Ausfüllen, dann die Datei noch einmal wählen.',
  'tables.refused':
    'Solange eine Zeile nicht geht, wird nichts übernommen. Diese in der Datei berichtigen, dann noch einmal wählen.',
  'tables.refused.title': '{count, plural, one {# Stelle zu berichtigen} other {# Stellen zu berichtigen}}',
  'tables.cares': 'Ansehen. Es kann so übernommen werden.',
  'tables.at.row': 'Zeile {row}',
  'tables.at.row-field': 'Zeile {row}, Spalte {field}',
  'tables.at.field': 'Spalte {field}',
  'tables.at.file': 'Die ganze Datei',
  'tables.show-all': 'Alle {count} zeigen',
  'tables.take': '{count, plural, one {# Zeile übernehmen} other {Alle # Zeilen übernehmen}}',
  'tables.taking': 'Alle Zeilen werden gespeichert, oder keine …',
  'tables.taken':
    'Gespeichert: {added, plural, one {# neu} other {# neu}}, {changed, plural, one {# geändert} other {# geändert}}.',
  'tables.undoing': 'Alles wird zurückgenommen …',
  'tables.undone': 'Alles ist wie vorher.',
  'tables.overtaken':
    'Das Werk wurde inzwischen anderswo geändert, darum wurde die Tabelle noch einmal dagegengehalten. Noch einmal durchsehen.',
  'tables.out': 'Tabelle ausgeben',
  'tables.out.help':
    '{count, plural, one {# Zeile} other {# Zeilen}} zum Ansehen, Ändern und Wiedereinlesen. Texte, die eine Tabellenkalkulation als Formel ausführen würde, stehen hinter einem Apostroph.',
  'tables.out.empty': 'Noch nichts da: Die Datei enthält die Überschriften, darunter ausfüllen.',
  'tables.out.csv': 'Als CSV',
  'tables.out.xlsx': 'Als XLSX',
  'tables.out.making': 'Die Datei wird geschrieben …',
  'tables.out.done': '{file} liegt bei den Downloads dieses Browsers.',
  'tables.fault.too-large': 'Nicht übernommen: Die Datei hat {value} MB, höchstens {max} MB werden gelesen. Aufteilen.',
  'tables.fault.old-workbook':
    'Nicht übernommen: Das ist eine alte Arbeitsmappe oder eine mit Passwort. Als XLSX ohne Passwort oder als CSV speichern.',
  'tables.fault.no-workbook':
    'Nicht übernommen: Das ist keine vollständige XLSX-Arbeitsmappe. In der Tabellenkalkulation öffnen und neu als XLSX oder CSV speichern.',
  'tables.fault.many-files':
    'Nicht übernommen: In der Arbeitsmappe stecken {value} Dateien, höchstens {max} werden gelesen. Das eine Blatt als CSV speichern.',
  'tables.fault.unpacks-large':
    'Nicht übernommen: Entpackt hat die Arbeitsmappe {value} MB, höchstens {max} MB werden gelesen. Das eine Blatt als CSV speichern oder aufteilen.',
  'tables.fault.steep':
    'Nicht übernommen: Ein Teil der Arbeitsmappe wird entpackt mehr als {max}-mal so groß, das macht keine Tabelle. Das Blatt als CSV speichern.',
  'tables.fault.many-rows':
    'Nicht übernommen: Das Blatt reicht bis Zeile {value}, höchstens {max} werden gelesen. Weit unter der Tabelle Stehendes löschen oder aufteilen.',
  'tables.fault.many-columns':
    'Nicht übernommen: Das Blatt reicht bis Spalte {value}, höchstens {max} werden gelesen. Weit rechts der Tabelle Stehendes löschen.',
  'tables.fault.many-cells':
    'Nicht übernommen: Das Blatt umspannt {value} Zellen, höchstens {max} werden gelesen. Aufteilen.',
  'tables.fault.failed':
    'Es ging nicht, nichts hat sich geändert. Noch einmal versuchen; geht es wieder nicht, die Seite neu laden.',
  'everything.title': 'Alles als eine Datei',
  'everything.out': 'Alles exportieren',
  'everything.out.help':
    'Alle Aufzeichnungen von {name}, unterschrieben, mit Bildern und Kurven, in einer Datei. Eine Kopie auf einem anderen Gerät aufbewahren: Was nur ein Gerät hat, geht mit ihm verloren.',
  'everything.verifier': 'Prüfprogramm laden',
  'everything.verifier.help':
    'Wer die Datei prüfen soll, muss dieser App nicht glauben: Ein Programm aus einer Datei, für Node oder einen Browser, sagt, ob sie ganz ist.',
  'everything.out.making': '{count, plural, one {# Aufzeichnung wird} other {# Aufzeichnungen werden}} geschrieben …',
  'everything.out.done': '{file} ({size} MB) liegt bei den Downloads dieses Browsers. Auf ein anderes Gerät kopieren.',
  'everything.in': 'Exportdatei importieren',
  'everything.in.help':
    'Eine Datei, die „Alles exportieren“ auf diesem oder einem anderen Gerät gemacht hat. Sie wird ganz geprüft, Zeile für Zeile, und es ist zu sehen, was darin steht, bevor etwas übernommen wird.',
  'everything.checking': 'Jede Zeile und Unterschrift wird geprüft …',
  'everything.whole': '{file} ist vollständig.',
  'everything.plant': 'Werk',
  'everything.records': 'Aufzeichnungen',
  'everything.records.new': '{count}, davon {fresh} hier neu',
  'everything.devices': 'Geräte, die sie schrieben',
  'everything.pictures': 'Bilder und Kurven',
  'everything.pictures.missing': '{count} ({missing} fehlen)',
  'everything.relation.first': 'Auf diesem Gerät ist noch nichts: Danach zeigt es dieses Werk.',
  'everything.relation.same': 'Dieses Werk ist schon da: Was neu ist, kommt hinzu.',
  'everything.relation.other':
    'Das ist ein anderes Werk. Danach wird es gezeigt; {name} bleibt auf dem Gerät, und die Einstellungen führen dorthin zurück.',
  'everything.unknown':
    '{count, plural, one {# Aufzeichnung stammt von einer neueren Version: Sie wird behalten, aber nicht gezeigt.} other {# Aufzeichnungen stammen von einer neueren Version: Sie werden behalten, aber nicht gezeigt.}} Diese App aktualisieren.',
  'everything.not-witnessed':
    'Hinter {count, plural, one {# Aufzeichnung} other {# Aufzeichnungen}} steht keine unterschriebene Erklärung des Geräts: Wahrscheinlich entstand die Datei vor den letzten.',
  'everything.take': 'Alles übernehmen',
  'everything.taking': 'Alles wird gespeichert, oder nichts …',
  'everything.taken': 'Alles ist auf diesem Gerät gespeichert. Es zeigt jetzt {name}.',
  'everything.no': 'Nicht übernehmen',
};
