// What a browser gets under this package's name: the same, but a language is fetched when somebody reads it.
export * from './index.ts';
export { readyLanguage, voice, wholeLanguage, wholeLanguages } from './voice-on-demand.ts';
