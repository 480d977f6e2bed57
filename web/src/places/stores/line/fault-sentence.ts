import type { SurveyLayout } from '@loopwright/plant';
import { type SentenceData, sentence, type Voice } from '@loopwright/words';
import type { LoopFault } from './loop-now.ts';

/** Numbers of pulleys by their ids: what stands in the drawing, not in the data. */
type Numbers = ReadonlyMap<string, number>;

/** Why the numbers make no loop: the pulleys by their number in the drawing, the measurement by its question. */
export function faultSentence(
  voice: Voice,
  fault: LoopFault,
  numbers: Numbers,
  layout: SurveyLayout | undefined,
): string {
  const { code, data, measurement } = fault;
  const question = measurement === undefined ? undefined : `survey.${measurement.replace(/_m$/, '')}`;
  const told: SentenceData = {
    ...numbered(data, numbers),
    ...(question !== undefined && voice.has(question) ? { question: voice.say(question) } : {}),
    ...(layout === undefined ? {} : { layout: voice.say(`layout.${layout}`) }),
  };
  const said = sentence(voice, { code, path: '', data: told });
  return question !== undefined && voice.has(question) ? `${voice.say(question)}: ${said}` : said;
}

function numbered(data: SentenceData, numbers: Numbers): SentenceData {
  const entries = Object.entries(data).map(([name, value]) => {
    const number = typeof value === 'string' ? numbers.get(value) : undefined;
    return [name, number === undefined ? value : String(number)] as const;
  });
  return Object.fromEntries(entries);
}
