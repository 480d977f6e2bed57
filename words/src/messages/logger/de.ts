import type { loggerEn } from './en.ts';

export const loggerDe: Readonly<Record<keyof typeof loggerEn, string>> = {
  'logger.title': 'Kurve eines Loggers',
  'logger.at-row': 'Zeile {row}: {said}',
  'logger.at-cell': 'Zeile {row}, Spalte {column}: {said}',
  'logger.fault.empty': 'die Datei ist leer. Die CSV-Datei des Loggers wählen.',
  'logger.fault.not-text': 'das ist kein Text. Als CSV in UTF-8 exportieren.',
  'logger.fault.line-too-long': 'länger als {longest} Zeichen. Das ist keine Tabelle; als CSV exportieren.',
  'logger.fault.no-columns': 'keine Spalten in „{value}“. Spalten trennt Komma, Semikolon oder Tabulator.',
  'logger.fault.decimal-comma':
    '„{value}“: Komma zwischen Spalten und in Zahlen. Mit Semikolon zwischen den Spalten exportieren.',
  'logger.fault.no-time':
    'keine Spalte mit Zeiten; „{value}“ ist keine. Zeiten sind Sekunden, mm:ss, hh:mm:ss oder Datum und Zeit.',
  'logger.fault.no-temperature': 'keine Spalte mit Temperaturen unter {columns}. Die Fühler mit exportieren.',
  'logger.fault.date-order': '„{value}“: Tag oder Monat zuerst? Datum mit dem Jahr zuerst exportieren.',
  'logger.fault.columns-missing': '{found} Spalten, {wanted} sind nötig. Noch einmal exportieren.',
  'logger.fault.not-a-number': '„{value}“ ist keine Temperatur. Zelle berichtigen oder leeren.',
  'logger.fault.time-not-read': '„{value}“ ist keine Zeit wie die anderen. Zelle berichtigen.',
  'logger.fault.time-goes-back':
    '„{value}“ liegt vor Zeile {before}. Nach Zeit sortieren oder die Datei dort teilen, wo die Uhr gestellt wurde.',
  'logger.fault.time-stands-still': 'alle {count} Zeilen haben dieselbe Zeit. Zeiten mit Sekunden exportieren.',
  'logger.fault.temperature-impossible':
    '{value} kann nicht sein: {least} bis {most} können sein. Andere Einheit oder Fühler gebrochen?',
  'logger.fault.unit-unclear':
    'von {least} bis {most} passt weder °C, °F noch K zu einer Presse. Einheit angeben oder Fühler prüfen.',
  'logger.fault.too-few-rows': '{count} Zeilen mit Ablesung, zwei sind nötig.',
  'logger.fault.stopped': 'angehalten; nichts gelesen.',
  'logger.fault.source-broke':
    'die Datei war nicht bis zum Ende lesbar: {reason}. Auf dieses Gerät kopieren und noch einmal versuchen.',
  'logger.note.rows-repeated': 'doppelte Zeilen: {count}, einmal genommen.',
  'logger.note.same-time': 'Zeilen mit der Zeit der vorigen: {count}, alle behalten.',
  'logger.note.cells-missing': 'Zellen ohne Ablesung: {count}, leer gelassen.',
  'logger.note.last-row-cut': 'die letzte Zeile ist abgeschnitten und bleibt weg.',
  'logger.note.gap': '{length} lang nichts aufgezeichnet, von {from} bis {to}. Nichts wird dafür eingesetzt.',
  'logger.note.one-sensor': 'nur ein Fühler: die beiden Seiten sind nicht zu vergleichen.',
  'logger.note.thinned': '{kept} von {count} Zeilen behalten, darunter Kleinstes und Größtes jeder Strecke.',
  'logger.question.temperature-unit':
    'Die Einheit steht nicht dabei. Als {unit} gelesen ist das Heißeste {hottest}. Stimmt das?',
  'logger.question.time-unit':
    'Die Zeiteinheit steht nicht dabei. Als {unit} gelesen dauert die Kurve {length}. Stimmt das?',
  'logger.question.columns':
    'Oben ist Spalte {top}, {bottom, select, none {unten fehlt} other {unten ist Spalte {bottom}}}. Stimmt das?',
  'logger.question.columns-swapped':
    'Die Überschriften passen nicht zu den Zahlen. Die Zeit steht in Spalte {time}. Stimmt das?',
  'logger.unit.degC': '°C',
  'logger.unit.degF': '°F',
  'logger.unit.K': 'K',
  'logger.unit.ms': 'Millisekunden',
  'logger.unit.s': 'Sekunden',
  'logger.unit.min': 'Minuten',
  'logger.unit.h': 'Stunden',
  'logger.unit.day': 'Tage',
  'logger.unit.clock-seconds': 'Minuten und Sekunden',
  'logger.unit.clock-minutes': 'Stunden und Minuten',
};
