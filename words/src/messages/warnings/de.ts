import type { warningsEn } from './en.ts';

export const warningsDe: Readonly<Record<keyof typeof warningsEn, string>> = {};
