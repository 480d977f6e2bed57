export const appEn = {
  'app.lines': 'Lines',
} as const;
