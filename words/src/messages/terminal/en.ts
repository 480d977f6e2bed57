export const terminalEn = {
  'terminal.wrote': 'Wrote {file}.',
} as const;
