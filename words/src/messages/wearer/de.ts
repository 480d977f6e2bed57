import type { wearerEn } from './en.ts';

/** Wer ein Abzeichen trägt, getrennt von den Aufzeichnungen. */
export const wearerDe: Readonly<Record<keyof typeof wearerEn, string>> = {
  'wearer.title': 'Wer dieses Abzeichen trägt',
  'wearer.about':
    'Die Aufzeichnungen kennen nur das Abzeichen, nie einen Namen. Ein hier notierter Name bleibt auf diesem Gerät: versiegelt, in keinem Export und in keiner Kopie.',
  'wearer.nobody-noted': 'Hier ist niemand notiert.',
  'wearer.not-here': 'Jemand war notiert; auf diesem Gerät lässt es sich nicht mehr lesen.',
  'wearer.erased': 'Wer dieses Abzeichen trug, wurde am {at} gelöscht.',
  'wearer.name': 'Name',
  'wearer.note': 'Auf diesem Gerät notieren',
  'wearer.erase': 'Für immer löschen, wer es ist',
  'wearer.erase.hold': '1 s halten',
  'wearer.erase.gone':
    'Dann ist fort: der Name, sein Schlüssel und die Verbindung zu diesem Abzeichen, auf diesem Gerät. Nichts bringt sie zurück.',
  'wearer.erase.stays':
    'Es bleibt: das Abzeichen, alles damit Geschriebene, und dass jemand gelöscht wurde. Die Aufzeichnungen bleiben ganz und lassen sich prüfen wie zuvor.',
  'wearer.fault': 'Es ließ sich nicht ganz schreiben. {reason}',
};
