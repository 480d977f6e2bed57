import type { problemsEn } from './en.ts';

export const problemsDe: Readonly<Record<keyof typeof problemsEn, string>> = {};
