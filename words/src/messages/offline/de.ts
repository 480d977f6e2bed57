import type { offlineEn } from './en.ts';

export const offlineDe: Readonly<Record<keyof typeof offlineEn, string>> = {
  'offline.app': 'App',
  'offline.version': 'Version {build}, Rechenkern {engine}',
  'offline.kept': 'Startet ohne Netz.',
  'offline.not-kept': 'Braucht zum Start das Netz, bis sie auf diesem Gerät liegt. Eine Minute offen lassen.',
  'offline.cannot':
    'Braucht zum Start das Netz: Dieser Browser behält sie nicht. In einem gewöhnlichen Fenster öffnen, von https oder localhost.',
  'offline.newer': 'Eine neue Version ist bereit.',
  'offline.newer.take': 'Laden',
  'offline.newer.busy':
    'Anderswo auf diesem Gerät ist ein Formular nicht gespeichert oder ein Lauf im Gang. Dort beenden, dann nochmals drücken.',
  'offline.install': 'App installieren',
  'offline.install.why':
    'Vor der ersten Aufzeichnung installieren: Dann öffnet sie sich vom Startbildschirm, und der Browser behält die Aufzeichnungen länger.',
  'offline.install.menu':
    'Zum Installieren im Menü des Browsers „Installieren“ oder „Zum Startbildschirm“ wählen, vor der ersten Aufzeichnung.',
  'offline.install.ios':
    'Zum Installieren auf iPhone oder iPad auf „Teilen“ tippen, dann auf „Zum Home-Bildschirm“. Vor der ersten Aufzeichnung von dort öffnen.',
  'offline.later': 'Später',
  'offline.part': 'Dieser Teil der App war nicht zu laden. Das Netz prüfen, dann die Seite neu laden.',
  'offline.part.again': 'Seite neu laden',
};
