import { auditEs } from './audit/es.ts';
import { cardEs } from './card/es.ts';
import { cycleEs } from './cycle/es.ts';
import type { Catalogue } from './en.ts';
import { fieldsEs } from './fields/es.ts';
import { firstEs } from './first-es.ts';
import { formulasEs } from './formulas/es.ts';
import { geometryEs } from './geometry/es.ts';
import { heatEs } from './heat/es.ts';
import { inspectionEs } from './inspection/es.ts';
import { labelsEs } from './labels/es.ts';
import { loggerEs } from './logger/es.ts';
import { meaningsEs } from './meanings/es.ts';
import { missingEs } from './missing/es.ts';
import { photoEs } from './photo/es.ts';
import { recipesEs } from './recipes/es.ts';
import { recordsEs } from './records/es.ts';
import { refusalsEs } from './refusals/es.ts';
import { runEs } from './run/es.ts';
import { runsEs } from './runs/es.ts';
import { scanEs } from './scan/es.ts';
import { seenEs } from './seen/es.ts';
import { startEs } from './start/es.ts';
import { stepsEs } from './steps/es.ts';
import { stockEs } from './stock/es.ts';
import { storesEs } from './stores/es.ts';
import { surveyEs } from './survey/es.ts';
import { tablesEs } from './tables/es.ts';
import { terminalEs } from './terminal/es.ts';
import { warningsEs } from './warnings/es.ts';
import { watchEs } from './watch/es.ts';
import { wearerEs } from './wearer/es.ts';

/** Every sentence in Spanish. */
export const es: Catalogue = {
  ...firstEs,
  ...auditEs,
  ...cardEs,
  ...cycleEs,
  ...fieldsEs,
  ...formulasEs,
  ...geometryEs,
  ...labelsEs,
  ...loggerEs,
  ...heatEs,
  ...inspectionEs,
  ...meaningsEs,
  ...missingEs,
  ...photoEs,
  ...recipesEs,
  ...recordsEs,
  ...refusalsEs,
  ...runEs,
  ...runsEs,
  ...scanEs,
  ...seenEs,
  ...startEs,
  ...stepsEs,
  ...stockEs,
  ...storesEs,
  ...surveyEs,
  ...tablesEs,
  ...terminalEs,
  ...warningsEs,
  ...wearerEs,
  ...watchEs,
};
