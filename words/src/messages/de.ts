import { appDe } from './app/de.ts';
import { cardDe } from './card/de.ts';
import type { Catalogue } from './en.ts';
import { fieldsDe } from './fields/de.ts';
import { formulasDe } from './formulas/de.ts';
import { meaningsDe } from './meanings/de.ts';
import { missingDe } from './missing/de.ts';
import { offlineDe } from './offline/de.ts';
import { problemsDe } from './problems/de.ts';
import { recordsDe } from './records/de.ts';
import { refusalsDe } from './refusals/de.ts';
import { statesDe } from './states/de.ts';
import { stepsDe } from './steps/de.ts';
import { stockDe } from './stock/de.ts';
import { storeDe } from './store/de.ts';
import { storesDe } from './stores/de.ts';
import { surveyDe } from './survey/de.ts';
import { terminalDe } from './terminal/de.ts';
import { unitsDe } from './units/de.ts';
import { warningsDe } from './warnings/de.ts';
import { whoDe } from './who/de.ts';

/** Every sentence in German. */
export const de: Catalogue = {
  ...appDe,
  ...cardDe,
  ...fieldsDe,
  ...formulasDe,
  ...meaningsDe,
  ...missingDe,
  ...offlineDe,
  ...problemsDe,
  ...recordsDe,
  ...refusalsDe,
  ...statesDe,
  ...stepsDe,
  ...stockDe,
  ...storeDe,
  ...storesDe,
  ...surveyDe,
  ...terminalDe,
  ...unitsDe,
  ...warningsDe,
  ...whoDe,
};
