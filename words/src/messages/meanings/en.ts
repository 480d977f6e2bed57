export const meaningsEn = {} as const;
