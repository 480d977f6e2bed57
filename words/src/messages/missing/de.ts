import type { missingEn } from './en.ts';

export const missingDe: Readonly<Record<keyof typeof missingEn, string>> = {};
