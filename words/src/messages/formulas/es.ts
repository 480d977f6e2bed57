import type { formulasEn } from './en.ts';

export const formulasEs: Readonly<Record<keyof typeof formulasEn, string>> = {};
