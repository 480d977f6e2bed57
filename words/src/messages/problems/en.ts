export const problemsEn = {} as const;
