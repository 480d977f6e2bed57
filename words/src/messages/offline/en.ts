/** Sentences about the app as a thing that is kept on a device. */
export const offlineEn = {
  'offline.app': 'App',
  'offline.version': 'Version {build}, engine {engine}',
  'offline.kept': 'Starts without a network.',
  'offline.not-kept': 'Needs the network to start until it is kept on this device. Leave it open for a minute.',
  'offline.cannot':
    'Needs the network to start: this browser does not keep it. Open it in an ordinary window, from https or localhost.',
  'offline.newer': 'A new version is ready.',
  'offline.newer.take': 'Load it',
  'offline.newer.busy':
    'Somewhere else on this device a form is not saved or a run is going. Finish it, then press again.',
  'offline.install': 'Install the app',
  'offline.install.why':
    'Install it before the first record: it then opens from the home screen, and the browser keeps its records longer.',
  'offline.install.menu':
    'To install it, choose “Install” or “Add to home screen” in the menu of the browser, before the first record.',
  'offline.install.ios':
    'To install it on iPhone or iPad, tap “Share”, then “Add to Home Screen”. Open it from there before the first record.',
  'offline.later': 'Later',
  'offline.part': 'This part of the app could not be fetched. Check the network, then load the page again.',
  'offline.part.again': 'Load the page again',
} as const;
