import type { meaningsEn } from './en.ts';

export const meaningsEs: Readonly<Record<keyof typeof meaningsEn, string>> = {};
