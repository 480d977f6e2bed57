import { appEs } from './app/es.ts';
import { cardEs } from './card/es.ts';
import type { Catalogue } from './en.ts';
import { fieldsEs } from './fields/es.ts';
import { formulasEs } from './formulas/es.ts';
import { meaningsEs } from './meanings/es.ts';
import { missingEs } from './missing/es.ts';
import { offlineEs } from './offline/es.ts';
import { problemsEs } from './problems/es.ts';
import { recordsEs } from './records/es.ts';
import { refusalsEs } from './refusals/es.ts';
import { statesEs } from './states/es.ts';
import { stepsEs } from './steps/es.ts';
import { stockEs } from './stock/es.ts';
import { storeEs } from './store/es.ts';
import { storesEs } from './stores/es.ts';
import { surveyEs } from './survey/es.ts';
import { terminalEs } from './terminal/es.ts';
import { unitsEs } from './units/es.ts';
import { warningsEs } from './warnings/es.ts';
import { whoEs } from './who/es.ts';

/** Every sentence in Spanish. */
export const es: Catalogue = {
  ...appEs,
  ...cardEs,
  ...fieldsEs,
  ...formulasEs,
  ...meaningsEs,
  ...missingEs,
  ...offlineEs,
  ...problemsEs,
  ...recordsEs,
  ...refusalsEs,
  ...statesEs,
  ...stepsEs,
  ...stockEs,
  ...storeEs,
  ...storesEs,
  ...surveyEs,
  ...terminalEs,
  ...unitsEs,
  ...warningsEs,
  ...whoEs,
};
