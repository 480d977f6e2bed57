export const warningsEn = {} as const;
