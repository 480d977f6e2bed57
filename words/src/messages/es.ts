import { cardEs } from './card/es.ts';
import type { Catalogue } from './en.ts';
import { fieldsEs } from './fields/es.ts';
import { firstEs } from './first-es.ts';
import { formulasEs } from './formulas/es.ts';
import { geometryEs } from './geometry/es.ts';
import { heatEs } from './heat/es.ts';
import { meaningsEs } from './meanings/es.ts';
import { missingEs } from './missing/es.ts';
import { recordsEs } from './records/es.ts';
import { refusalsEs } from './refusals/es.ts';
import { startEs } from './start/es.ts';
import { stepsEs } from './steps/es.ts';
import { stockEs } from './stock/es.ts';
import { storesEs } from './stores/es.ts';
import { surveyEs } from './survey/es.ts';
import { terminalEs } from './terminal/es.ts';
import { warningsEs } from './warnings/es.ts';

/** Every sentence in Spanish. */
export const es: Catalogue = {
  ...firstEs,
  ...cardEs,
  ...fieldsEs,
  ...formulasEs,
  ...geometryEs,
  ...heatEs,
  ...meaningsEs,
  ...missingEs,
  ...recordsEs,
  ...refusalsEs,
  ...startEs,
  ...stepsEs,
  ...stockEs,
  ...storesEs,
  ...surveyEs,
  ...terminalEs,
  ...warningsEs,
};
