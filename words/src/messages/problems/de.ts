import type { problemsEn } from './en.ts';

export const problemsDe: Readonly<Record<keyof typeof problemsEn, string>> = {
  'place.file': '{file}',
  'place.row': '{file}, Zeile {row}',
  'place.field': '{file}, Spalte {field}',
  'place.row-field': '{file}, Zeile {row}, {field}',
  // What may be wrong with the files themselves.
  'problem.file-missing':
    'diese Datei fehlt im Ordner{other, select, none {} other {, {other} verweist darauf}}. Anlegen, mit Kopfzeile und einer Zeile je Ding.',
  'problem.file-too-large':
    'die Datei hat {value} Byte, gelesen werden höchstens {max}. Aufteilen oder entfernen, was nicht hineingehört.',
  'problem.too-many-rows': 'mehr als {max} Zeilen. Das Werk auf mehrere Ordner aufteilen.',
  'problem.too-many-columns': '{value} Spalten, gelesen werden höchstens {max}. Leere und fremde Spalten entfernen.',
  'problem.not-text': 'nicht als Text lesbar (Byte {value} an Stelle {at}). Neu als CSV in UTF-8 speichern.',
  'problem.workbook': 'das ist eine Tabellenkalkulation. Das Blatt als CSV in UTF-8 speichern.',
  'problem.open-quote': 'hier beginnt ein Anführungszeichen, das nie endet. Schließen oder entfernen.',
  'problem.no-header': 'es gibt keine Kopfzeile. Die Namen der Spalten in Zeile 1 schreiben.',
  'problem.duplicate-column': 'die Spalten „{value}“ und „{other}“ bedeuten dasselbe. Eine behalten.',
  'problem.unknown-column':
    'Spalte „{value}“ ist nicht bekannt.{nearest, select, none {} other { Gemeint ist vielleicht „{nearest}“.}} Umbenennen oder entfernen.',
  'problem.missing-column': 'es fehlt eine Spalte, die jede Zeile braucht: {allowed}. Ergänzen.',
  'problem.unit-missing': 'Überschrift „{value}“ nennt keine Einheit. Eine davon schreiben: {allowed}.',
  'problem.unknown-unit':
    'Überschrift „{value}“ endet auf eine Einheit, die nicht passt ({unit}). Eine davon schreiben: {allowed}.',
  'problem.ragged-row':
    'die Zeile hat {value} Zellen, die Kopfzeile {max}. Nach einem Trennzeichen im Text suchen; solchen Text in Anführungszeichen setzen.',
  'problem.not-one-row': '{value} Zeilen, genau eine wird erwartet. Die Zeile dieses Werks behalten.',
  'problem.missing-value': 'die Zelle ist leer. Wert eintragen oder die Zeile entfernen.',
  'problem.not-a-number':
    '„{value}“ erhalten, nötig ist eine Zahl. Nur Ziffern schreiben; die Einheit steht in der Überschrift.',
  'problem.decimal-comma':
    '„{value}“ mit Dezimalkomma, aber hier trennen Kommas die Spalten. Punkt schreiben oder Spalten mit Semikolon trennen.',
  'problem.mixed-decimals':
    'Dezimalkomma in „{value}“ (Zeile {row}), Dezimalpunkt in „{other}“ (Zeile {otherRow}). In der ganzen Datei nur eines verwenden.',
  'problem.thousands-separator':
    '„{value}“ gliedert die Ziffern, das Dezimalzeichen ist unklar. Ohne Gliederung schreiben, etwa 64302.5.',
  'problem.out-of-range': '{value} erhalten, erlaubt ist {allowed}. Zahl und Einheit in der Überschrift prüfen.',
  'problem.not-one-of': '„{value}“ erhalten, erlaubt sind: {allowed}. Eines davon schreiben.',
  'problem.not-yes-or-no': '„{value}“ erhalten, nötig ist ja oder nein. Eines davon schreiben.',
  'problem.not-a-day': '„{value}“ erhalten, nötig ist ein Tag. Jahr-Monat-Tag schreiben, etwa 2026-03-02.',
  'problem.not-a-moment': '„{value}“ erhalten, nötig ist ein Zeitpunkt in UTC. Schreiben wie 2026-11-25T02:04:00Z.',
  'problem.too-long': 'der Text hat {length} Zeichen, erlaubt sind höchstens {max}. Kürzen.',
  'problem.hidden-signs': 'im Text steht ein Zeichen, das man nicht sieht ({value}). Den Text von Hand neu eingeben.',
  'problem.bad-id':
    '„{value}“ geht nicht als Kennung. 1 bis 40 Buchstaben, Ziffern, „-“, „_“ oder „.“ verwenden, vorn Buchstabe oder Ziffer, ohne Leerzeichen.',
  'problem.duplicate-id': '„{value}“ steht schon in Zeile {otherRow}. Eine der beiden anders nennen oder entfernen.',
  'problem.dangling-reference':
    '„{value}“ steht nicht in {other}.{nearest, select, none {} other { Gemeint ist vielleicht „{nearest}“.}} Namen berichtigen oder dort eine Zeile ergänzen.',
  'problem.more-problems': '{value} weitere Fehler in dieser Datei. Die genannten beheben und erneut prüfen.',
  'problem.encoding-assumed': 'nicht UTF-8; als {value} gelesen. Umlaute und Akzente ansehen und als UTF-8 speichern.',
  'problem.unknown-file':
    'diese Datei wird nicht gelesen.{nearest, select, none {} other { Gemeint ist vielleicht „{nearest}“.}} Umbenennen oder so lassen.',
  // What may be wrong between the fields of a plant.
  'problem.neutral-line-outside-belt':
    'die neutrale Faser bei {value} liegt außerhalb des {max} dicken Riemens. Abstand von der Laufseite eintragen, 0 bis {max}.',
  'problem.covers-over-thickness':
    'beide Deckschichten nehmen zusammen {value} von {max} Dicke ein und lassen dem Zugträger nichts. Deckschichten messen.',
  'problem.elongation-window-empty':
    'die kleinste Dehnung {value} liegt nicht unter der größten, {max}. Beide im Datenblatt nachsehen.',
  'problem.die-fits-no-belt': 'kein Riemen hat Finger {pitch} × {fingerLength}. Beide Maße am Stanzmesser prüfen.',
  'problem.line-without-die':
    'kein Stanzmesser schneidet die Finger von Riemen {other}, {pitch} × {fingerLength}. Stanzmesser ergänzen oder Finger des Riemens berichtigen.',
  'problem.die-too-narrow':
    'der Riemen ist {value} breit, Stanzmesser {other} nimmt höchstens {max}. Breiteres Stanzmesser ergänzen oder Breite berichtigen.',
  'problem.line-without-template':
    'keine Schablone hat eine Tasche für Riemen {other}, {value} breit. Schablone ergänzen oder ihre Tasche nachmessen.',
  'problem.template-wider-than-die':
    'die Tasche ist {value} breit, Stanzmesser {other} stanzt höchstens {max}. Beides prüfen.',
  'problem.template-depth-differs':
    'die Tasche ist {value} tief; Riemen {other}, der nächste, ist {max} dick. Falsche Tiefe quetscht die Naht oder lässt sie leer. Tasche messen.',
  'problem.belt-wider-than-pulley':
    'die Scheibe ist {value} breit, der Riemen der Linie {other} braucht mindestens {min}. Beides prüfen.',
  'problem.pulley-under-limit':
    'der Durchmesser ist {value}, Riemen {other} braucht mindestens {min}. Der Riemen bricht dort früh. Nachmessen; stimmt es, größere Scheibe vorsehen.',
  'problem.counter-bend-under-limit':
    'die Scheibe berührt die Tragseite und hat {value}; Riemen {other} braucht dort mindestens {min}. Die Verbindung bricht früh. Nachmessen; stimmt es, größere Scheibe vorsehen.',
  'problem.take-up-reference-over-stroke':
    'die Koordinaten gelten bei {value} Spannweg, der ganze Spannweg ist {max}. Eines der beiden berichtigen.',
  'problem.take-up-over-stroke':
    'die Spannvorrichtung steht bei {value}, der Spannweg der Linie {other} ist {max}. Beides vom losen Anschlag aus messen.',
  'problem.take-up-stroke-missing':
    'es gibt eine Spannvorrichtung, aber keinen Spannweg. Weg vom losen bis zum gespannten Anschlag messen.',
  'problem.take-up-direction-missing':
    'die Spannvorrichtung hat keine Richtung (0, 0). Eintragen, wohin sie beim Spannen fährt, etwa 0 und -1 für abwärts.',
  'problem.take-up-force-missing':
    'eine Spannvorrichtung mit {value, select, spring {Feder} gravity {Gewicht} other {{value}}} braucht ihre Kraft. Wiegen oder an der Feder ablesen.',
  'problem.drives-not-one': '{value} Antriebsscheiben, genau eine wird erwartet. Die vom Motor gedrehte kennzeichnen.',
  'problem.take-ups-not-one': '{value} Spannscheiben, genau eine wird erwartet. Die bewegliche kennzeichnen.',
  'problem.take-up-not-expected':
    'die Linie nennt keine Spannvorrichtung, aber Scheibe {other} ist eine. Eines der beiden berichtigen.',
  'problem.duplicate-order':
    'Nummer {value} in der Laufreihenfolge hat schon Scheibe {other} der Linie {line}. Scheiben so nummerieren, wie der Riemen sie trifft.',
  'problem.line-without-path':
    'weder Scheiben noch Aufmaß, deshalb keine Zeichnung der Riemenführung. Scheiben eintragen oder Linie nach den Aufmaßfragen messen.',
  'problem.survey-refused': 'das Aufmaß der Linie {line} ergibt keine Riemenführung. {reason}',
  'problem.path-refused': 'so eingetragen kann hier kein Riemen laufen. {reason}',
  'problem.elongation-outside-window':
    'Auflegedehnung {value}, Riemen {other} ist für {allowed} gemacht. Wert an der Linie prüfen.',
  'problem.recipe-not-above-opening':
    'die Temperatur {value} liegt nicht über der Öffnungstemperatur {min}. Heizprogramm prüfen.',
  'problem.recipe-over-press-pressure':
    'das Heizprogramm braucht {value} am Riemen, Heizpresse {other} gibt höchstens {max}. Andere Heizpresse nehmen oder Heizprogramm prüfen.',
};
