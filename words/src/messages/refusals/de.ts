import type { refusalsEn } from './en.ts';

export const refusalsDe: Readonly<Record<keyof typeof refusalsEn, string>> = {};
