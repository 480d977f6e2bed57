import type { surveyEn } from './en.ts';

export const surveyDe: Readonly<Record<keyof typeof surveyEn, string>> = {};
