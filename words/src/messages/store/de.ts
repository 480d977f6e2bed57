import type { storeEn } from './en.ts';

export const storeDe: Readonly<Record<keyof typeof storeEn, string>> = {
  'store.demo': 'Demowerk, erfunden.',
  'store.device': 'Dieses Gerät',
  'store.everything': 'Alles exportieren oder importieren',
  'store.plant-name': 'Name des Werks',
  'store.persist': 'Aufzeichnungen auf diesem Gerät behalten',
  'store.lost.read': 'Gelesen',
  'store.notice.lost':
    '{count, plural, one {# Aufzeichnung} other {# Aufzeichnungen}} von {name}, hier gespeichert, sind weg: Der Browser hat seinen Speicher gelöscht oder beschädigt. Vor neuen Eingaben den letzten Export einlesen.',
  'store.notice.back-again':
    'Der Browser hat seinen Speicher verloren oder beschädigt. {count, plural, one {# Eintrag} other {# Einträge}} von {name} kamen aus der zweiten Kopie zurück. Dieses Gerät signiert ab jetzt mit einem neuen Schlüssel. Alles exportieren.',
  'store.notice.broken':
    'Die Kette der Aufzeichnungen ist bei Nummer {at} gebrochen. Es wird nichts mehr angefügt. Jetzt alles exportieren und die Datei der Person zeigen, die für die Aufzeichnungen zuständig ist.',
  'store.notice.newer':
    'In einem anderen Tab ist eine neuere Version offen. Diese Seite neu laden; bis dahin wird hier nichts behalten.',
  'store.notice.closed':
    'Der Browser hat den Speicher geschlossen. Diese Seite neu laden; bis dahin wird hier nichts behalten.',
  'store.notice.no-storage':
    'Dieser Browser verbietet das Speichern: Das Werk wird nur gezeigt, Eingaben gehen verloren. Speichern für diese Seite erlauben.',
  'store.notice.blocked':
    'In einem anderen Tab ist eine ältere Version offen: Das Werk wird nur gezeigt. Die anderen Tabs dieser App schließen, dann die Seite neu laden.',
  'store.notice.reserve-used':
    'Der Speicher war voll, die Reserve ist aufgebraucht. Alles exportieren, dann auf dem Gerät Platz schaffen.',
  'store.notice.nearly-full':
    'Wenig Platz: {used} MB von {quota} MB sind belegt. Alles exportieren, dann auf dem Gerät Platz schaffen.',
  'store.notice.private':
    'Dies scheint ein privates Fenster zu sein: Beim Schließen sind die Aufzeichnungen weg. Ein gewöhnliches Fenster nehmen oder vorher exportieren.',
  'store.notice.clock':
    'Die Uhr dieses Geräts ist um {seconds} s gesprungen. Das ist aufgezeichnet. Datum und Uhrzeit am Gerät prüfen.',
  'store.notice.unknown-events':
    '{count, plural, one {# Aufzeichnung stammt von einer neueren Version: Sie bleibt erhalten, wird aber nicht gezeigt.} other {# Aufzeichnungen stammen von einer neueren Version: Sie bleiben erhalten, werden aber nicht gezeigt.}} Diese App aktualisieren.',
  'store.notice.practice-only':
    'Nur zum Üben: Im Tab löscht dieser Browser alles nach sieben Tagen ohne Benutzung. Vor der ersten Aufzeichnung die Seite auf den Startbildschirm legen und von dort öffnen.',
  'store.notice.install-first':
    'Vor der ersten Aufzeichnung installieren: Im Tab darf der Browser bei Platzmangel alles löschen.',
  'store.notice.not-persisted':
    'Der Browser hat nicht zugesagt, die Aufzeichnungen bei Platzmangel zu behalten. Die App installieren und ab und zu alles exportieren.',
  'store.notice.persisted': 'Der Browser hat zugesagt, die Aufzeichnungen zu behalten.',
  'store.notice.copied': 'Jeder Eintrag steht doppelt auf diesem Gerät.',
  'store.notice.not-copied':
    'Die zweite Kopie der Einträge wird nicht geschrieben: Dieser Browser hat keinen Platz dafür, oder der Speicher ist voll. Ab und zu alles exportieren.',
  'store.notice.key-copyable':
    'Der Schlüssel dieses Geräts lässt sich kopieren: Dieser Browser kann ihn nicht wegschließen. Ein neuerer kann es.',
  'store.quota':
    'Nicht gespeichert: Der Speicher ist voll. Alles exportieren, Platz schaffen, dann noch einmal speichern.',
  'store.blocked':
    'In einem anderen Tab ist eine ältere Version offen. Die anderen Tabs dieser App schließen, dann die Seite neu laden.',
  'store.busy': 'Nicht gespeichert: Ein anderer Tab war am Schreiben. Noch einmal speichern.',
  'store.closed':
    'Nicht gespeichert: Der Browser hat den Speicher geschlossen. Die Seite neu laden, dann noch einmal eingeben.',
  'store.broken':
    'Nicht gespeichert: Die Kette der Aufzeichnungen ist gebrochen. Alles exportieren und die Datei der Person zeigen, die für die Aufzeichnungen zuständig ist.',
  'store.refused':
    'Nicht gespeichert: Das ist keine vollständige Aufzeichnung ({type}). Die Eingaben prüfen, dann noch einmal speichern.',
  'store.clock':
    'Nicht gespeichert: Die Uhr dieses Geräts zeigt ein unmögliches Datum. Datum und Uhrzeit stellen, dann noch einmal speichern.',
  'store.no-storage':
    'Nicht gespeichert: Dieser Browser verbietet das Speichern. Speichern für diese Seite erlauben, dann neu laden.',
  'store.newer': 'Nicht gespeichert: Eine neuere Version war hier. Die Seite neu laden.',
  'store.failed':
    'Nicht gespeichert: Der Browser konnte nicht schreiben ({reason}). Noch einmal speichern; geht es wieder nicht, die Seite neu laden.',
  'store.no-such-event': 'Diese Änderung gibt es in diesem Werk nicht. Die Seite neu laden.',
  'store.no-such-plant': 'Dieses Werk gibt es auf diesem Gerät nicht. Die Seite neu laden.',
  'store.nothing-to-undo': 'Nichts zurückzunehmen: Es ist schon so wie vorher.',
  'store.file-too-large':
    'Nicht übernommen: Entpackt hat die Datei {value} MB, höchstens {max} MB sind erlaubt. Neu exportieren.',
  'store.file-many-entries':
    'Nicht übernommen: Im Archiv sind {value} Dateien, höchstens {max} sind erlaubt. Neu exportieren.',
  'store.file-ratio':
    'Nicht übernommen: „{name}“ würde beim Entpacken mehr als {max}-mal so groß, das macht kein Export. Neu exportieren.',
  'store.file-path':
    'Nicht übernommen: „{name}“ im Archiv führt aus seinem Ordner hinaus, das macht kein Export. Neu exportieren.',
  'store.file-no-archive':
    'Nicht übernommen: Das ist keine vollständige Exportdatei. Noch einmal vom anderen Gerät kopieren oder neu exportieren.',
  'store.file-no-log':
    'Nicht übernommen: Im Archiv sind keine Aufzeichnungen. Eine Datei wählen, die mit „Alles exportieren“ entstand.',
  'store.file-blob':
    'Nicht übernommen: Ein Bild in der Datei ist nicht das aufgezeichnete ({name}). Die Datei neu kopieren oder exportieren.',
  'store.file-verdict':
    'Nicht übernommen: Zeile {line} der Datei {verdict, select, truncated {fehlt: Die Datei wurde abgeschnitten} other {ist nicht so, wie ihr Gerät sie schrieb}} ({verdict}). Die Datei noch einmal kopieren oder neu exportieren.',
  'store.file-newer':
    'Nicht übernommen: Die Datei schrieb eine neuere Version dieser App (Form {version}; diese liest Form {known}). Diese App aktualisieren, dann die Datei noch einmal importieren.',
  'store.file-fork':
    'Nicht übernommen: Bei Nummer {seq} sagt die Datei etwas anderes als dieses Gerät, mit derselben Unterschrift. Beides behalten und der Person zeigen, die für die Aufzeichnungen zuständig ist.',
  'store.file-nothing-new': 'Nicht übernommen: Dieses Gerät hat schon alles, was in der Datei steht.',
};
