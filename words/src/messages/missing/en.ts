export const missingEn = {} as const;
