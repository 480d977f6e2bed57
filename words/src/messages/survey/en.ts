export const surveyEn = {} as const;
