import type { stockEn } from './en.ts';

export const stockEs: Readonly<Record<keyof typeof stockEn, string>> = {};
