import type { refusalsEn } from './en.ts';

export const refusalsEs: Readonly<Record<keyof typeof refusalsEn, string>> = {};
