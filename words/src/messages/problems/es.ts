import type { problemsEn } from './en.ts';

export const problemsEs: Readonly<Record<keyof typeof problemsEn, string>> = {};
