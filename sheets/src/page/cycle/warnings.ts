import type { CycleGrade, CycleWarning, Quantity } from '@loopwright/jobs';
import { type Params, sentence, type Voice } from '@loopwright/words';
import { written } from '../figure.ts';
import type { Block } from '../page.ts';
import type { CycleReader } from './reader.ts';

/** A grade in words. */
export const gradeWord = (grade: CycleGrade['grade'], voice: Voice): string => voice.say(`cycle.grade.${grade}`);

/** What a cycle warns of, as cautions; what the plant lacks for a cycle, said with what to enter. */
export function cycleWarningBlocks({ report, voice, display }: CycleReader): Block[] {
  const { cycle, press, recipe } = report;
  const missing = [...(press ? [] : (['press'] as const)), ...(recipe ? [] : (['recipe'] as const))];
  const reason = cycle?.status === 'none' ? { reason: sentence(display, cycle) } : {};
  return [
    ...missing.map((code) => caution('care', voice.say(`missing.${code}`))),
    ...report.warnings.map(({ code, level, data }) =>
      caution(level, voice.say(`warning.${code}`, { ...cycleParams(data, voice), ...reason })),
    ),
  ];
}

/** Values of a warning as text, whether of a cycle or of a card. */
export function cycleParams(data: CycleWarning['data'], voice: Voice): Params {
  const one = (name: string, value: Quantity | string | number): string | number => {
    if (typeof value === 'object') return written(value, voice);
    return name === 'grade' ? gradeWord(value as CycleGrade['grade'], voice) : value;
  };
  return Object.fromEntries(Object.entries(data).map(([name, value]) => [name, one(name, value)]));
}

const caution = (level: CycleWarning['level'], text: string): Block => ({ kind: 'caution', level, text });
