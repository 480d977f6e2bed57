import { auditEn } from './audit/en.ts';
import { cardEn } from './card/en.ts';
import { cycleEn } from './cycle/en.ts';
import { fieldsEn } from './fields/en.ts';
import { firstEn } from './first-en.ts';
import { formulasEn } from './formulas/en.ts';
import { geometryEn } from './geometry/en.ts';
import { heatEn } from './heat/en.ts';
import { inspectionEn } from './inspection/en.ts';
import { labelsEn } from './labels/en.ts';
import { loggerEn } from './logger/en.ts';
import { meaningsEn } from './meanings/en.ts';
import { missingEn } from './missing/en.ts';
import { photoEn } from './photo/en.ts';
import { recipesEn } from './recipes/en.ts';
import { recordsEn } from './records/en.ts';
import { refusalsEn } from './refusals/en.ts';
import { runEn } from './run/en.ts';
import { runsEn } from './runs/en.ts';
import { scanEn } from './scan/en.ts';
import { seenEn } from './seen/en.ts';
import { startEn } from './start/en.ts';
import { stepsEn } from './steps/en.ts';
import { stockEn } from './stock/en.ts';
import { storesEn } from './stores/en.ts';
import { surveyEn } from './survey/en.ts';
import { tablesEn } from './tables/en.ts';
import { terminalEn } from './terminal/en.ts';
import { warningsEn } from './warnings/en.ts';
import { watchEn } from './watch/en.ts';
import { wearerEn } from './wearer/en.ts';

/** Every sentence in English; its keys are the keys of every language. */
export const en = {
  ...firstEn,
  ...auditEn,
  ...cardEn,
  ...cycleEn,
  ...fieldsEn,
  ...formulasEn,
  ...geometryEn,
  ...labelsEn,
  ...loggerEn,
  ...heatEn,
  ...inspectionEn,
  ...meaningsEn,
  ...missingEn,
  ...photoEn,
  ...recipesEn,
  ...recordsEn,
  ...refusalsEn,
  ...runEn,
  ...runsEn,
  ...scanEn,
  ...seenEn,
  ...startEn,
  ...stepsEn,
  ...stockEn,
  ...storesEn,
  ...surveyEn,
  ...tablesEn,
  ...terminalEn,
  ...warningsEn,
  ...wearerEn,
  ...watchEn,
} as const;

export type MessageKey = keyof typeof en;

/** The sentences of one language; one that is missing does not compile. */
export type Catalogue = Readonly<Record<MessageKey, string>>;
