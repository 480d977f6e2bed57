import type { photoEn } from './en.ts';

/** Ein Foto, das bei den Aufzeichnungen bleibt. */
export const photoDe: Readonly<Record<keyof typeof photoEn, string>> = {
  'photo.take': '{side}: Foto aufnehmen',
  'photo.take-again': '{side}: noch ein Foto aufnehmen',
  'photo.choose': 'Ein Foto von vorher wählen',
  'photo.reading': 'Das Foto wird gelesen und verkleinert …',
  'photo.reading-large': 'Ein Foto aus {megapixels} Millionen Punkten: Verkleinern dauert einige Sekunden …',
  'photo.stop': 'Lesen abbrechen',
  'photo.keeping': 'Das Foto geht auf den Speicher dieses Geräts …',
  'photo.kept': 'Auf diesem Gerät behalten: {width} × {height} Punkte. Ort, Zeit und Kamera sind daraus entfernt.',
  'photo.not-kept': 'Das Foto ist gelesen und noch nicht behalten. {reason}',
  'photo.keep-again': 'Noch einmal versuchen',
  'photo.thumb.reading': '{label}: Das Foto wird geholt …',
  'photo.thumb.not-here':
    '{label}: Das Foto ist nicht auf diesem Gerät. Die Aufzeichnungen des Geräts einlesen, das es aufnahm; sie bringen es mit.',
  'photo.thumb.damaged':
    '{label}: Das Foto ist beschädigt und lässt sich nicht zeigen. Die Aufzeichnungen noch einmal von einem Gerät einlesen, das es hat.',
  'photo.fault.empty': 'Die Datei ist leer: 0 Byte. Das Foto noch einmal aufnehmen.',
  'photo.fault.unreadable':
    'Die Datei lässt sich nicht mehr lesen: Sie wurde verschoben oder liegt nicht auf diesem Gerät. Hier speichern, dann noch einmal wählen.',
  'photo.fault.too-large':
    'Die Datei hat {size} MB; gelesen werden höchstens {most} MB. Die Kamera auf ein kleineres Bild stellen und das Foto noch einmal aufnehmen.',
  'photo.fault.not-a-photo':
    'Diese Datei ist kein Bild, was immer ihr Name sagt. Ein Foto aufnehmen oder ein JPEG, PNG oder WebP wählen.',
  'photo.fault.moving':
    'Das ist ein GIF oder ein bewegtes Bild, kein einzelnes Foto. Ein Foto aufnehmen oder ein JPEG, PNG oder WebP wählen.',
  'photo.fault.cut': 'Die Datei endet vor dem Bild. Noch einmal kopieren oder das Foto noch einmal aufnehmen.',
  'photo.fault.too-many-dots':
    'Das Bild hat {dots} Millionen Punkte; von seiner Art werden höchstens {most} Millionen entpackt. Die Kamera auf ein kleineres Bild stellen und das Foto noch einmal aufnehmen.',
  'photo.fault.heif':
    'Dieser Browser liest Fotos dieser Form nicht (HEIC oder AVIF). Die Kamera auf JPEG stellen und das Foto noch einmal aufnehmen.',
  'photo.fault.not-decoded':
    'Das Bild ist beschädigt, oder dieses Gerät hat keinen Platz, es zu entpacken. Andere Seiten schließen, dann das Foto noch einmal aufnehmen.',
  'photo.fault.stopped': 'Abgebrochen; dieses Foto wurde nicht behalten. Bei Gelegenheit noch einmal aufnehmen.',
};
