import type { terminalEn } from './en.ts';

export const terminalDe: Readonly<Record<keyof typeof terminalEn, string>> = {
  'terminal.wrote': '{file} geschrieben.',
};
