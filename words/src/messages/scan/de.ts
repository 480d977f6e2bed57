import type { scanEn } from './en.ts';

export const scanDe: Readonly<Record<keyof typeof scanEn, string>> = {
  'scan.title': 'Position scannen',
  'scan.aim': 'Das Schild der Position in den Rahmen halten, etwa eine Armlänge entfernt.',
  'scan.starting': 'Die Kamera startet …',
  'scan.camera.denied': 'Diese Seite darf die Kamera nicht benutzen.',
  'scan.camera-next.denied':
    'Die Kamera in den Einstellungen des Browsers für diese Seite erlauben, dann noch einmal versuchen. Oder die Position eintippen.',
  'scan.camera.none': 'Dieses Gerät hat keine Kamera, die eine Seite benutzen kann.',
  'scan.camera-next.none': 'Die Position eintippen oder ein Foto ihres Schilds wählen.',
  'scan.camera.busy': 'Ein anderes Programm hält die Kamera, oder sie startet nicht.',
  'scan.camera-next.busy': 'Das andere Programm schließen, dann noch einmal versuchen. Oder die Position eintippen.',
  'scan.camera.insecure': 'Der Browser gibt die Kamera nur Seiten über https oder von diesem Gerät selbst.',
  'scan.camera-next.insecure': 'Die Position eintippen oder ein Foto ihres Schilds wählen.',
  'scan.again': 'Kamera noch einmal versuchen',
  'scan.dark': 'Zum Lesen ist es zu dunkel. Licht an das Schild bringen oder die Position eintippen.',
  'scan.slow': 'Noch nichts gelesen. Schild abwischen, Kamera gerade und näher halten oder die Position eintippen.',
  'scan.reader': 'Der Teil, der Codes liest, ließ sich nicht laden. Seite neu laden oder die Position eintippen.',
  'scan.torch': 'Licht',
  'scan.type': 'Stattdessen eintippen',
  'scan.type.hint': 'wie auf dem Schild',
  'scan.photo': 'Foto davon wählen',
  'scan.photo.reading': 'Das Foto wird gelesen …',
  'scan.photo.nothing':
    'In diesem Foto ist kein Code zu finden. Näher, gerade und scharf aufnehmen oder die Position eintippen.',
  'scan.photo.not': 'Diese Datei ist kein lesbares Foto. Ein JPEG oder PNG von höchstens 30 MB wählen.',
  'scan.says': 'Darin steht:',
  'scan.refused.address': 'Dieser Code enthält eine Adresse, keine Position. Sie wurde nicht geöffnet.',
  'scan.refused.foreign': 'Dieser Code ist kein Schild einer Position.',
  'scan.refused.later-form':
    'Dieses Schild hat eine spätere Form, als diese Fassung liest. Die neue Fassung der App nehmen oder die Position eintippen.',
  'scan.refused.malformed':
    'Dieses Schild ist nicht vollständig. Die Position eintippen, die darauf steht, und ein neues drucken.',
  'scan.refused.checksum':
    'Dieses Schild wurde falsch gelesen: Die Prüfsumme passt nicht. Abwischen und noch einmal scannen oder die Position eintippen.',
  'scan.refused.empty': 'Dieser Code ist leer.',
  'scan.unknown': 'Auf dem Schild steht {position}; im Werk {plant} gibt es diese Position nicht.',
  'scan.unknown.next': 'Sie ist vielleicht entfernt oder umbenannt. Unten suchen oder ein neues Schild drucken.',
  'scan.other-plant': 'Dieses Schild wurde für ein anderes Werk als {plant} gedruckt.',
  'scan.other-plant.here': '{position} gibt es auch hier. Nur öffnen, wenn das Schild in diesem Werk hängt.',
  'scan.other-plant.none': 'In den Einstellungen das Werk wechseln oder die Position eintippen.',
  'scan.open': '{position} dieses Werks öffnen',
};
