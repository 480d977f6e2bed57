import type { Language } from '../language.ts';
import { appDe } from './app/de.ts';
import { appEn } from './app/en.ts';
import { appEs } from './app/es.ts';
import { cardDe } from './card/de.ts';
import { cardEn } from './card/en.ts';
import { cardEs } from './card/es.ts';
import { formulasDe } from './formulas/de.ts';
import { formulasEn } from './formulas/en.ts';
import { formulasEs } from './formulas/es.ts';
import { meaningsDe } from './meanings/de.ts';
import { meaningsEn } from './meanings/en.ts';
import { meaningsEs } from './meanings/es.ts';
import { missingDe } from './missing/de.ts';
import { missingEn } from './missing/en.ts';
import { missingEs } from './missing/es.ts';
import { problemsDe } from './problems/de.ts';
import { problemsEn } from './problems/en.ts';
import { problemsEs } from './problems/es.ts';
import { refusalsDe } from './refusals/de.ts';
import { refusalsEn } from './refusals/en.ts';
import { refusalsEs } from './refusals/es.ts';
import { stepsDe } from './steps/de.ts';
import { stepsEn } from './steps/en.ts';
import { stepsEs } from './steps/es.ts';
import { stockDe } from './stock/de.ts';
import { stockEn } from './stock/en.ts';
import { stockEs } from './stock/es.ts';
import { surveyDe } from './survey/de.ts';
import { surveyEn } from './survey/en.ts';
import { surveyEs } from './survey/es.ts';
import { terminalDe } from './terminal/de.ts';
import { terminalEn } from './terminal/en.ts';
import { terminalEs } from './terminal/es.ts';
import { unitsDe } from './units/de.ts';
import { unitsEn } from './units/en.ts';
import { unitsEs } from './units/es.ts';
import { warningsDe } from './warnings/de.ts';
import { warningsEn } from './warnings/en.ts';
import { warningsEs } from './warnings/es.ts';

/** Every sentence in English; its keys are the keys of every language. */
const en = {
  ...appEn,
  ...cardEn,
  ...formulasEn,
  ...meaningsEn,
  ...missingEn,
  ...problemsEn,
  ...refusalsEn,
  ...stepsEn,
  ...stockEn,
  ...surveyEn,
  ...terminalEn,
  ...unitsEn,
  ...warningsEn,
} as const;

export type MessageKey = keyof typeof en;

const de: Readonly<Record<MessageKey, string>> = {
  ...appDe,
  ...cardDe,
  ...formulasDe,
  ...meaningsDe,
  ...missingDe,
  ...problemsDe,
  ...refusalsDe,
  ...stepsDe,
  ...stockDe,
  ...surveyDe,
  ...terminalDe,
  ...unitsDe,
  ...warningsDe,
};

const es: Readonly<Record<MessageKey, string>> = {
  ...appEs,
  ...cardEs,
  ...formulasEs,
  ...meaningsEs,
  ...missingEs,
  ...problemsEs,
  ...refusalsEs,
  ...stepsEs,
  ...stockEs,
  ...surveyEs,
  ...terminalEs,
  ...unitsEs,
  ...warningsEs,
};

/** All sentences by language; a sentence missing in one language does not compile. */
export const catalogues: Readonly<Record<Language, Readonly<Record<MessageKey, string>>>> = { en, de, es };
