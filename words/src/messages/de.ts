import { auditDe } from './audit/de.ts';
import { cardDe } from './card/de.ts';
import { cycleDe } from './cycle/de.ts';
import type { Catalogue } from './en.ts';
import { fieldsDe } from './fields/de.ts';
import { firstDe } from './first-de.ts';
import { formulasDe } from './formulas/de.ts';
import { geometryDe } from './geometry/de.ts';
import { heatDe } from './heat/de.ts';
import { inspectionDe } from './inspection/de.ts';
import { labelsDe } from './labels/de.ts';
import { loggerDe } from './logger/de.ts';
import { meaningsDe } from './meanings/de.ts';
import { missingDe } from './missing/de.ts';
import { photoDe } from './photo/de.ts';
import { recipesDe } from './recipes/de.ts';
import { recordsDe } from './records/de.ts';
import { refusalsDe } from './refusals/de.ts';
import { runDe } from './run/de.ts';
import { runsDe } from './runs/de.ts';
import { scanDe } from './scan/de.ts';
import { seenDe } from './seen/de.ts';
import { startDe } from './start/de.ts';
import { stepsDe } from './steps/de.ts';
import { stockDe } from './stock/de.ts';
import { storesDe } from './stores/de.ts';
import { surveyDe } from './survey/de.ts';
import { tablesDe } from './tables/de.ts';
import { terminalDe } from './terminal/de.ts';
import { warningsDe } from './warnings/de.ts';
import { watchDe } from './watch/de.ts';
import { wearerDe } from './wearer/de.ts';

/** Every sentence in German. */
export const de: Catalogue = {
  ...firstDe,
  ...auditDe,
  ...cardDe,
  ...cycleDe,
  ...fieldsDe,
  ...formulasDe,
  ...geometryDe,
  ...labelsDe,
  ...loggerDe,
  ...heatDe,
  ...inspectionDe,
  ...meaningsDe,
  ...missingDe,
  ...photoDe,
  ...recipesDe,
  ...recordsDe,
  ...refusalsDe,
  ...runDe,
  ...runsDe,
  ...scanDe,
  ...seenDe,
  ...startDe,
  ...stepsDe,
  ...stockDe,
  ...storesDe,
  ...surveyDe,
  ...tablesDe,
  ...terminalDe,
  ...warningsDe,
  ...wearerDe,
  ...watchDe,
};
