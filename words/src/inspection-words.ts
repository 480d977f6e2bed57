import type { MessageKey } from './messages/en.ts';
import type { Params, Voice } from './speak.ts';

/** One reason of a verdict, as an inspection gives it; numbers in SI. */
export interface SaidBecause {
  readonly code: string;
  readonly defect?: string;
  readonly face?: string;
  readonly measure?: string;
  readonly watch?: string;
  readonly data: Readonly<Record<string, number>>;
}

/** What somebody is asked. */
export interface SaidAsk {
  readonly code: string;
  readonly defect: string;
  readonly measure?: string;
}

/** Lines of the inspection that stand by themselves. */
export type InspectionLine = 'title' | 'proposed' | 'no-proof' | 'second';

/** The words of an inspection for one reader. */
export interface InspectionWords {
  readonly line: (line: InspectionLine) => string;
  /** Name of a defect, and in one line how it looks. */
  readonly name: (defect: string) => string;
  readonly look: (defect: string) => string;
  readonly severity: (code: string) => string;
  readonly level: (code: string) => string;
  readonly cause: (code: string) => string;
  readonly answer: (code: string) => string;
  readonly place: (code: string) => string;
  readonly measure: (code: string) => string;
  /** A number of a measure with its unit. */
  readonly value: (measure: string, value: number) => string;
  readonly now: (code: string) => string;
  readonly next: (code: string) => string;
  readonly because: (because: SaidBecause) => string;
  /** The question itself: what separates the causes, what to measure, where it sits, whether it opens. */
  readonly ask: (ask: SaidAsk) => string;
}

/**
 * The words of the catalogue of defects and of an inspection.
 *
 * @param voice - language and units of the reader
 */
export function inspectionWords(voice: Voice): InspectionWords {
  const say = (key: string, params?: Params): string => (voice.has(key) ? voice.say(key, params) : key);
  const name = (code: string): string => say(`inspection.name.${code}`);
  const measure = (code: string): string => say(`inspection.measure.${code}`);
  return {
    line: (line) => say(`inspection.${line}`),
    name,
    look: (code) => say(`inspection.look.${code}`),
    severity: (code) => say(`inspection.severity.${code}`),
    level: (code) => say(`inspection.level.${code}`),
    cause: (code) => say(`inspection.cause.${code}`),
    answer: (code) => say(`inspection.answer.${code}`),
    place: (code) => say(`inspection.place.${code}`),
    measure,
    value: (code, value) => written(voice, code, value),
    now: (code) => say(`inspection.now.${code}`),
    next: (code) => say(`inspection.next.${code}`),
    because: (because) => becauseText(voice, because, say),
    ask: ({ code, defect, measure: of = '' }) =>
      code === 'cause' ? say(`inspection.question.${defect}`) : say(`inspection.ask.${code}`, { measure: measure(of) }),
  };
}

/** A hundredth of a millimetre, a thousandth of an inch: what a gauge can tell. */
const fineDigits = { metric: 2, us: 3 } as const;

/** A share of the outline is a percentage, a colour difference has no unit, all else are small lengths. */
function written(voice: Voice, measure: string | undefined, value: number): string {
  if (measure === 'outline') return voice.write(value, 'percent', { digits: 0 });
  return measure === 'colour'
    ? voice.number(value, 1)
    : voice.write(value, 'shortLength', { digits: fineDigits[voice.units] });
}

function becauseText(voice: Voice, said: SaidBecause, say: (key: string, params?: Params) => string): string {
  const { code, defect, face, measure, watch, data } = said;
  const named = defect === undefined ? say(`inspection.measure.${measure}`) : say(`inspection.name.${defect}`);
  const where = face === undefined ? undefined : say(`run.choice.${face}`);
  const what = where === undefined ? named : say('inspection.because.on-face', { defect: named, face: where });
  const numbers = Object.fromEntries(
    Object.entries(data).map(([key, value]) => [key, written(voice, measure, value)] as const),
  );
  const seen = watch === undefined ? {} : { watch: say(`watch.short.${watch}`) };
  return [
    voice.say(`inspection.because.${code}` as MessageKey, { ...numbers, ...seen, what }),
    ...effects(voice, data),
  ].join(' ');
}

/** What the defect does to the belt, where it could be computed. */
function effects(voice: Voice, { edge_share, tipGap_m }: SaidBecause['data']): readonly string[] {
  return [
    ...(edge_share === undefined
      ? []
      : [voice.say('inspection.because.edge-strain', { edge: voice.write(edge_share, 'percent', { digits: 0 }) })]),
    ...(tipGap_m === undefined
      ? []
      : [voice.say('inspection.because.tip-gap', { tipGap: voice.write(tipGap_m, 'shortLength') })]),
  ];
}
