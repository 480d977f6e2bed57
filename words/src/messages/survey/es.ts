import type { surveyEn } from './en.ts';

export const surveyEs: Readonly<Record<keyof typeof surveyEn, string>> = {};
