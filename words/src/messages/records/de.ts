import type { recordsEn } from './en.ts';

export const recordsDe: Readonly<Record<keyof typeof recordsEn, string>> = {
  'refusal.byte-order-mark': 'der Text beginnt mit einer Bytefolge-Marke. Als UTF-8 ohne sie speichern.',
  'refusal.not-utf8': 'die Bytes sind kein UTF-8. Den Text als UTF-8 speichern.',
  'refusal.duplicate-name': 'ein Name steht zweimal in einem Objekt. Einen davon streichen.',
  'refusal.too-deep':
    'zu tief verschachtelt: höchstens {max, select, none {32} other {{max}}} Ebenen. Flacher aufbauen.',
  'refusal.number-not-finite': 'eine Zahl ist nicht endlich oder größer, als ein Rechner fasst. Berichtigen.',
  'refusal.lone-surrogate': 'ein Zeichen ist halbiert (einzelnes Surrogat). Den Text berichtigen.',
  'refusal.not-plain-data':
    'aufbewahrt werden nur Texte, endliche Zahlen, true, false, null, Listen und Objekte. Anderes weglassen.',
  'refusal.not-hex': 'nicht hexadezimal: Nötig sind Paare der Ziffern 0 bis 9 und a bis f. Berichtigen.',
  'refusal.wrong-length': '{value} erhalten, nötig ist {allowed}. Prüfen, ob alles mitkopiert wurde.',
  'refusal.not-a-hash':
    '„{value}“ erhalten, nötig ist ein SHA-256 aus 64 Hexadezimalziffern. Prüfen, ob alles mitkopiert wurde.',
  'refusal.not-a-moment': '„{value}“ erhalten, nötig ist ein Zeitpunkt in UTC wie 2026-11-25T02:04:00Z.',
  'refusal.empty': 'ist leer. Ausfüllen.',
  'refusal.unsafe-integer': '{value} erhalten: Ganze Zahlen jenseits von {max} bleiben nicht genau. Als Text eingeben.',
  'refusal.event-too-large': '{value} erhalten, in ein Ereignis passen höchstens {max}. Langes als Datei anhängen.',
  'refusal.wrong-device': 'der Prüfpunkt ist von einem anderen Gerät. Den zu diesem Protokoll gehörenden angeben.',
  'refusal.checkpoint-behind':
    'der Prüfpunkt reicht bis {value} Ereignisse, das Protokoll hat {min}. Zuerst einen neuen unterschreiben.',
  'refusal.file-too-large': 'die Datei fasst {value}, gelesen werden höchstens {max}. Weniger auf einmal ausgeben.',
  'refusal.file-many-entries':
    'das Archiv hat {value} Dateien, gelesen werden höchstens {max}. Weniger auf einmal ausgeben.',
  'refusal.file-ratio':
    '„{name}“ wird beim Entpacken mehr als {max}-mal so groß. Das ist keine Ausgabe von hier; nicht öffnen.',
  'refusal.file-path': '„{name}“ weist aus dem Archiv hinaus. Das ist keine Ausgabe von hier; nicht öffnen.',
  'refusal.file-no-archive': 'das ist weder eine Ausgabe von hier noch ein ganzes Archiv. Die Datei neu holen.',
  'refusal.file-no-log': 'im Archiv fehlt log.jsonl. Eine Datei wählen, die hier ausgegeben wurde.',
  'refusal.no-such-event': 'dieses Ereignis steht nicht im Protokoll. Eines aus dem Verlauf wählen.',
  'refusal.nothing-to-undo':
    'an diesem Ereignis ist nichts mehr zurückzunehmen: Es hat hier nichts geändert, oder es steht schon alles wie zuvor. Den Eintrag selbst ändern.',
  'warning.clock-back':
    'Zeile {at} (die erste ist 0): Die Uhr des Geräts war zurückgestellt worden. Uhrzeiten davor und danach nicht vergleichen.',
  'warning.not-witnessed':
    'ab Zeile {at} (die erste ist 0) deckt kein Prüfpunkt die Ereignisse dieses Geräts: Fehlte am Ende etwas, fiele es nicht auf.',
  'warning.blob-missing':
    'Zeile {at} (die erste ist 0) nennt ein Bild oder eine Kurve, die nicht in dieser Datei liegt ({blob}…).',
  'warning.blob-unnamed': 'kein Ereignis nennt das Bild oder die Kurve {blob}… in dieser Datei. Sie belegt nichts.',
  'warning.file-unknown': '„{name}“ in diesem Archiv gehört zu keiner Ausgabe und wurde nicht angesehen.',
  'warning.witness-elsewhere':
    'Zeile {at} (die erste ist 0) der Gegenzeichnungen betrifft ein Protokoll, das nicht in dieser Datei liegt.',
  'verdict.ok': 'Ganz: Seit der Unterschrift wurde kein Ereignis geändert, verschoben oder entfernt.',
  'verdict.not-canonical':
    'Zeile {at} (die erste ist 0) steht nicht so da, wie sie geschrieben wurde: geändert, beschädigt oder abgeschnitten. Eine andere Kopie holen.',
  'verdict.bad-envelope':
    'Zeile {at} (die erste ist 0) hat nicht die Felder dieser Fassung: Ein neueres Programm hat sie geschrieben, oder sie wurde geändert.',
  'verdict.wrong-plant': 'Zeile {at} (die erste ist 0) gehört zu einem anderen Werk.',
  'verdict.wrong-device': 'Zeile {at} (die erste ist 0) stammt von einem Gerät, das nicht hierher gehört.',
  'verdict.bad-signature':
    'Zeile {at} (die erste ist 0) wurde nach der Unterschrift geändert oder von jemand anderem unterschrieben.',
  'verdict.sequence-gap':
    'Bei Zeile {at} (die erste ist 0) fehlen Ereignisse, stehen doppelt oder in anderer Reihenfolge.',
  'verdict.broken-link':
    'Zeile {at} (die erste ist 0) folgt nicht aus dem, was davor steht: Dort wurde etwas geändert.',
  'verdict.bad-checkpoint':
    'Der Prüfpunkt{at, select, none {} other { über {at} Ereignisse}} fehlt oder gehört nicht zu diesem Protokoll. Eine andere Kopie holen.',
  'verdict.truncated':
    'Das Ende nach {at} fehlt{witnessed, select, none {} other {; es gab einmal {witnessed} Ereignisse}}. Eine andere Kopie holen.',
  'verdict.history-rewritten':
    'Ereignisse bis Nummer {at} wurden neu geschrieben, nachdem sie schon bezeugt waren. Mit einer anderen Kopie vergleichen.',
  'verdict.fork': 'Ab Ereignis {at} sagen die beiden Kopien Verschiedenes: Ein Gerät hat beides geschrieben.',
  'verdict.prefix': 'Eine Kopie endet bei {at} Ereignissen, die andere geht weiter.',
  'verdict.blob-changed':
    'Ein Bild oder eine Kurve, die Zeile {at} (die erste ist 0) nennt, ist nicht die aufgezeichnete.',
  'verdict.bad-witness':
    'Zeile {at} (die erste ist 0) der Gegenzeichnungen wurde geändert oder ist keine. Die Kopie des Zeugen selbst holen.',
  'verify.field': 'Feld: {field}.',
  'verify.device': 'Es ist das Protokoll des Geräts {device}.',
  'verify.blob':
    'Datei: blobs/{blob}; {field, select, bytes {ihre Größe ist eine andere} other {ihr Inhalt ist ein anderer}}.',
  'verify.by-witness': 'Das sagt Zeile {witness} (die erste ist 0) der Gegenzeichnungen.',
  'verify.seen':
    '{device}: gesehen von {by, plural, =0 {keinem anderen Gerät, nur auf diesem Gerät} one {einem anderen Gerät} other {# anderen Geräten}}{by, plural, =0 {} other {{open, plural, =0 {} one {; das letzte Ereignis nur auf diesem Gerät} other {; die letzten # Ereignisse nur auf diesem Gerät}}}}.',
  'witness.first-seen':
    '{device}: {size, plural, one {ein Ereignis} other {# Ereignisse}} gegengezeichnet, zum ersten Mal gesehen.',
  'witness.same':
    '{device}: {size, plural, one {ein Ereignis} other {# Ereignisse}} gegengezeichnet; nichts Neues seit dem letzten Mal.',
  'witness.grown':
    '{device}: {size, plural, one {ein Ereignis} other {# Ereignisse}} gegengezeichnet; enthält, was schon gegengezeichnet war.',
  'witness.older':
    '{device}: diese Kopie hat {size} Ereignisse, gegengezeichnet waren schon {known}. Nicht gegengezeichnet: die neuere Kopie verlangen.',
  'witness.not-proved':
    '{device}: nicht belegt, dass die {known} schon gegengezeichneten Ereignisse enthalten sind. Nicht gegengezeichnet: das ganze Protokoll verlangen.',
  'witness.fork':
    '{device}: ALARM: zwei verschiedene Verläufe mit {size} Ereignissen, beide von diesem Gerät unterschrieben. Beide Dateien aufbewahren und der Stelle melden, die die Aufzeichnungen betreut.',
  'witness.rewritten':
    '{device}: ALARM: enthält die {known} schon gegengezeichneten Ereignisse nicht; sie wurden neu geschrieben. Beide Dateien aufbewahren und melden.',
  'witness.no-key':
    '{file} enthält keinen privaten Ed25519-Schlüssel in PEM-Form. Eine andere Datei angeben oder eine, die es noch nicht gibt.',
  'witness.new-key': 'Neuer Schlüssel für diesen Zeugen: {file}. Niemandem geben.',
  'witness.locked':
    'Ein anderer Zeuge benutzt diese Datei. Warten; läuft keiner, {file} löschen und es noch einmal versuchen.',
  'witness.kept-damaged':
    '{file} ist beschädigt: Das Aufbewahrte lässt sich nicht vergleichen. Aus einer Kopie wiederherstellen, nicht neu anfangen.',
  'verify.log':
    '{device}: {size, plural, one {ein Ereignis} other {# Ereignisse}}, {open, plural, =0 {alle durch einen Prüfpunkt gedeckt} one {eines davon nur in dieser Kopie} other {# davon nur in dieser Kopie}}.',
  'verify.throwaway':
    'Unterschrieben mit einem Schlüssel, der nur für diese Datei gemacht und weggeworfen wurde: Spätere Änderungen fallen auf, der Verfasser ist nicht belegt. Code: {code}',
};
