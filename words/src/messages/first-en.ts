import { appEn } from './app/en.ts';
import { offlineEn } from './offline/en.ts';
import { placesEn } from './places/en.ts';
import { problemsEn } from './problems/en.ts';
import { statesEn } from './states/en.ts';
import { storeEn } from './store/en.ts';
import { unitsEn } from './units/en.ts';
import { whoEn } from './who/en.ts';

/** What the list of lines says, in English: a browser fetches this before anything is shown, and all the rest after it. */
export const firstEn = {
  ...appEn,
  ...offlineEn,
  ...placesEn,
  ...problemsEn,
  ...statesEn,
  ...storeEn,
  ...unitsEn,
  ...whoEn,
} as const;
