import { appDe } from './app/de.ts';
import type { firstEn } from './first-en.ts';
import { offlineDe } from './offline/de.ts';
import { placesDe } from './places/de.ts';
import { problemsDe } from './problems/de.ts';
import { statesDe } from './states/de.ts';
import { storeDe } from './store/de.ts';
import { unitsDe } from './units/de.ts';
import { whoDe } from './who/de.ts';

/** What the list of lines says, in German. */
export const firstDe: Readonly<Record<keyof typeof firstEn, string>> = {
  ...appDe,
  ...offlineDe,
  ...placesDe,
  ...problemsDe,
  ...statesDe,
  ...storeDe,
  ...unitsDe,
  ...whoDe,
};
