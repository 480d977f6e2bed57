import type { missingEn } from './en.ts';

export const missingEs: Readonly<Record<keyof typeof missingEn, string>> = {};
