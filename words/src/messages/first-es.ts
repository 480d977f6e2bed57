import { appEs } from './app/es.ts';
import type { firstEn } from './first-en.ts';
import { offlineEs } from './offline/es.ts';
import { placesEs } from './places/es.ts';
import { problemsEs } from './problems/es.ts';
import { statesEs } from './states/es.ts';
import { storeEs } from './store/es.ts';
import { unitsEs } from './units/es.ts';
import { whoEs } from './who/es.ts';

/** What the list of lines says, in Spanish. */
export const firstEs: Readonly<Record<keyof typeof firstEn, string>> = {
  ...appEs,
  ...offlineEs,
  ...placesEs,
  ...problemsEs,
  ...statesEs,
  ...storeEs,
  ...unitsEs,
  ...whoEs,
};
