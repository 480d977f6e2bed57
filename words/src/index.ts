export { feetInches } from './feet-inches.ts';
export {
  type InspectionLine,
  type InspectionWords,
  inspectionWords,
  type SaidAsk,
  type SaidBecause,
} from './inspection-words.ts';
export { isLanguage, type Language, languages } from './language.ts';
export { type LoggerWords, loggerWords, type SaidLoggerFault, type SaidLoggerQuestion } from './logger-words.ts';
export type { MessageKey } from './messages/index.ts';
export { type FileProblem, problemReason, problemSentence } from './problem-sentence.ts';
export {
  type RunFacts,
  type RunLine,
  type RunWords,
  runWords,
  type SaidDeviation,
  type SaidMeanwhile,
  type SaidWhyNot,
} from './run-words.ts';
export {
  plainLetters,
  type SearchSynonym,
  type SearchTerm,
  searchSynonyms,
  searchTerms,
  termsFor,
} from './search-synonyms.ts';
export { type Refused, type SentenceData, sentence } from './sentence.ts';
export type { Shown, ShowOptions } from './shown.ts';
export { stateWords } from './state-words.ts';
export { isQuantityKind, type QuantityKind, quantityKinds, type UnitSystem, unitSystems } from './units.ts';
export { joined, type Params, readyLanguage, type Voice, voice, wholeLanguage, wholeLanguages } from './voice.ts';
export { waitingText } from './waiting-text.ts';
export { type SaidWarning, type WatchWords, watchWords } from './watch-words.ts';
export { type FormulaSource, type SymbolSource, type WorkedText, workedText } from './worked-text.ts';
