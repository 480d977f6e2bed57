import { Refusal } from '@loopwright/engine/refusal';
import { type Answer, type Problem, refusedAnswer } from '@loopwright/jobs/solve';
import type { FolderProblem } from '@loopwright/plant';
import { problemSentence, sentence, voice } from '@loopwright/words';

/** Answers over HTTP are read by scripts, so they speak one language; the page has its own sentences for the codes. */
const english = voice('en', 'metric');

export function say(problem: Problem): string {
  return sentence(english, problem);
}

export function problemText(problem: FolderProblem): string {
  return problemSentence(english, problem);
}

/** The refusal of a body of `size` bytes above the limit; a sender who names no size is cut off one byte above it. */
export function refuseTooLarge(size: number, max: number): Answer {
  const value = size > max ? size : max + 1;
  return refusedAnswer(new Refusal('too-large', '', { value, max, unit: 'bytes' }), say);
}
