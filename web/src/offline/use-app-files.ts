import { useSyncExternalStore } from 'react';
import { isBusy, onBusyChange } from './busy.ts';
import { canInstall, onInstallChange } from './install.ts';
import { type AppFiles, appFiles, onAppFilesChange } from './update.ts';

export function useAppFiles(): AppFiles {
  return useSyncExternalStore(onAppFilesChange, appFiles);
}

/** True while something goes on in this tab that nothing may disturb. */
export function useIsBusy(): boolean {
  return useSyncExternalStore(onBusyChange, isBusy);
}

/** True when the browser can be told to install the app. */
export function useCanInstall(): boolean {
  return useSyncExternalStore(onInstallChange, canInstall);
}
