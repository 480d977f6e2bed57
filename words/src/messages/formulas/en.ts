export const formulasEn = {} as const;
