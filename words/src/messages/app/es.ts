import type { appEn } from './en.ts';

export const appEs: Readonly<Record<keyof typeof appEn, string>> = {
  'app.lines': 'Líneas',
};
