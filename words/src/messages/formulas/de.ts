import type { formulasEn } from './en.ts';

export const formulasDe: Readonly<Record<keyof typeof formulasEn, string>> = {};
