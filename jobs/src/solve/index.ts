export type { Answer, Problem, Say } from './answer.ts';
export { type ExplainedFormula, type FormulaForm, formulasOf } from './explain.ts';
export { checkSize, largestInput_bytes, readJson } from './read-json.ts';
export { refusedAnswer, type SolveOptions, solve } from './solve.ts';
export type { Topic } from './topic.ts';
export { answerSchema, topicSchema } from './topic-schema.ts';
export { topicOf, topics } from './topics.ts';
