import type { appEn } from './en.ts';

export const appDe: Readonly<Record<keyof typeof appEn, string>> = {
  'app.lines': 'Linien',
};
