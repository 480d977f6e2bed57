import type { seenEn } from './en.ts';

/** Geräte, die einander ihre Aufzeichnungen bezeugen. */
export const seenDe: Readonly<Record<keyof typeof seenEn, string>> = {
  'seen.title': 'Wer die Aufzeichnungen gesehen hat',
  'seen.about':
    'Was nur dieses Gerät hat, kann verloren gehen oder spurlos neu geschrieben werden. Ein anderes Gerät, das die Aufzeichnungen gesehen hat, bezeugt sie: Es zeigt, wenn sie später verändert werden.',
  'seen.nothing-kept': 'Diese Seite behält nichts, also bezeugt sie nichts. Neu laden oder Speicher für sie erlauben.',
  'seen.own': 'Aufzeichnungen dieses Geräts',
  'seen.own.nothing': 'Dieses Gerät hat in diesem Werk noch nichts geschrieben. Zuerst etwas eingeben.',
  'seen.only-here':
    'Nur auf diesem Gerät: {count, plural, one {sein einziger Eintrag} other {alle seine # Einträge}}. Ein anderes Gerät sie sehen lassen.',
  'seen.seen':
    'Von einem anderen Gerät gesehen: {open, plural, =0 {alle seine {count} Einträge} one {alle seine {count} Einträge bis auf den letzten} other {alle seine {count} Einträge bis auf die letzten #}}.',
  'seen.by': 'Gerät {device} sah {size, plural, one {einen Eintrag} other {# Einträge}} am {at}.',
  'seen.on-card': 'Protokoll mit {count, plural, one {# Eintrag} other {# Einträgen}}: {code}',
  'seen.code': 'Code:',
  'seen.code.help':
    'Der Code dieser Aufzeichnungen, wie er auf einem gedruckten Bericht steht. Papier und Aufzeichnungen lassen sich gegeneinander halten.',
  'seen.show': 'Das vor die Kamera des anderen Geräts halten, auf dieser selben Seite:',
  'seen.show.label': 'Code mit dem, was dieses Gerät von seinen Aufzeichnungen sagt',
  'seen.other': 'Aufzeichnungen eines anderen Geräts',
  'seen.other.help':
    'Den Code auf dem anderen Bildschirm lesen: Dieses Gerät merkt sich, was er sagt, und zeichnet gegen, dass es ihn sah. Die Antwort des anderen Geräts ebenso lesen.',
  'seen.camera.on': 'Code mit der Kamera lesen',
  'seen.camera.off': 'Kamera ausschalten',
  'seen.type': 'Oder was ein Handscanner tippt',
  'seen.type.take': 'Nehmen',
  'seen.file': 'Datei mit Gegenzeichnungen nehmen',
  'seen.file.help':
    'Eine Datei witnesses.jsonl von einem Gerät oder Server, der die Aufzeichnungen dieses Werks gesehen hat.',
  'seen.back': 'Jetzt das vor die Kamera des anderen Geräts halten, damit es das weiß:',
  'seen.back.label': 'Code mit der Gegenzeichnung dieses Geräts',
  'seen.unreadable.damaged':
    'Dieser Code ist nicht ganz gelesen. Die Kamera näher und ruhig halten oder den anderen Bildschirm heller stellen.',
  'seen.unreadable.other':
    'Das ist kein Code dieser Seite. Auf dem anderen Gerät „Wer die Aufzeichnungen gesehen hat“ öffnen.',
  'seen.not-met.own': 'Das ist der Code dieses Geräts selbst. Ein Gerät ist kein Zeuge seiner eigenen Aufzeichnungen.',
  'seen.not-met.other-plant': 'Dieser Code ist von einem anderen Werk. Auf beiden Geräten dasselbe Werk zeigen.',
  'seen.not-met.unsound':
    'Dieser Code ist nicht von dem Gerät unterschrieben, das er nennt. Nichts wurde gegengezeichnet.',
  'seen.taken':
    '{fresh, plural, =0 {Nichts Neues: } one {Eine Gegenzeichnung ist jetzt behalten. } other {# Gegenzeichnungen sind jetzt behalten. }}{known, plural, =0 {} one {Eine war bekannt. } other {# waren bekannt. }}{elsewhere, plural, =0 {} one {Eine betrifft Aufzeichnungen, die nicht auf diesem Gerät sind.} other {# betreffen Aufzeichnungen, die nicht auf diesem Gerät sind.}}',
  'seen.not-taken': 'Keine der Gegenzeichnungen wurde genommen.',
};
