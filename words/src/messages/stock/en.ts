export const stockEn = {} as const;
