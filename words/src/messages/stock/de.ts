import type { stockEn } from './en.ts';

export const stockDe: Readonly<Record<keyof typeof stockEn, string>> = {};
