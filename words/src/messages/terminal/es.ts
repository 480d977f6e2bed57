import type { terminalEn } from './en.ts';

export const terminalEs: Readonly<Record<keyof typeof terminalEn, string>> = {
  'terminal.wrote': 'Escrito: {file}.',
};
