export const refusalsEn = {} as const;
