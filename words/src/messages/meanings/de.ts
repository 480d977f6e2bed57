import type { meaningsEn } from './en.ts';

export const meaningsDe: Readonly<Record<keyof typeof meaningsEn, string>> = {};
