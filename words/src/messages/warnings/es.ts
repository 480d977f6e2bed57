import type { warningsEn } from './en.ts';

export const warningsEs: Readonly<Record<keyof typeof warningsEn, string>> = {};
