import type { MessageKey } from './messages/en.ts';
import type { Params, Voice } from './speak.ts';
import { isQuantityKind } from './units.ts';
import { waitingText } from './waiting-text.ts';

/** What the card and the plant say of a run: names of things, numbers in SI. */
export interface RunFacts {
  readonly names: Readonly<Record<string, string>>;
  readonly numbers: Readonly<Record<string, RunFactNumber>>;
  readonly people: number;
  readonly retensionOn?: string;
}

interface RunFactNumber {
  readonly value: number;
  readonly kind: string;
  /** True for what a press display shows; it is said as the display shows it. */
  readonly onDisplay?: boolean;
}

/** What departed from the card, as a run holds it. */
export interface SaidDeviation {
  readonly code: string;
  readonly step?: string;
  readonly data: Readonly<Record<string, string | number>>;
}

/** Why something may not be done. */
export interface SaidWhyNot {
  readonly code: string;
  readonly steps?: readonly string[];
  readonly data?: Readonly<Record<string, string | number>>;
}

/** What happened while nobody looked. */
export interface SaidMeanwhile {
  readonly code: string;
  readonly ago_s?: number;
  readonly data: Readonly<Record<string, string | number>>;
}

/** Lines of the screen that belong to no step. */
export type RunLine =
  | 'title'
  | 'hold'
  | 'accepted'
  | 'not-accepted'
  | 'about'
  | 'keep-closed'
  | 'nothing-to-do'
  | 'when-displays'
  | 'not-a-signal'
  | 'display-should-read'
  | 'measure-this'
  | 'still-open'
  | 'retension'
  | 'attempt';

/** The words of one run for one reader. */
export interface RunWords {
  /** Title, what to do, and why. */
  readonly step: (step: string) => string;
  readonly todo: (step: string) => string;
  readonly why: (step: string) => string;
  readonly group: (group: string) => string;
  readonly action: (code: string) => string;
  /** An answer, a verdict, a face, a word of the display. */
  readonly choice: (code: string) => string;
  readonly reason: (code: string) => string;
  readonly measure: (code: string) => string;
  readonly phase: (code: string) => string;
  readonly timer: (code: string) => string;
  readonly sure: (code: string) => string;
  readonly sign: (word: string) => string;
  readonly people: (count: number) => string;
  readonly end: (how: string) => string;
  readonly deviation: (deviation: SaidDeviation) => string;
  readonly blocked: (why: SaidWhyNot) => string;
  readonly meanwhile: (meanwhile: SaidMeanwhile) => string;
  /** Lines of the screen that stand by themselves. */
  readonly line: (line: RunLine, values?: Params) => string;
  /** What goes on if the belt is not dry, or the recipe differs. */
  readonly ways: (answer: 'not-dry' | 'differs') => string;
}

/**
 * The words of a run: the same for screen and paper.
 *
 * @param voice - language and units of the reader
 * @param facts - names and numbers of the run
 * @param display - how the press display shows its numbers; default: as the reader
 */
export function runWords(voice: Voice, facts: RunFacts, display: Voice = voice): RunWords {
  const params = paramsOf(voice, facts, display);
  const say = (key: string): string => (voice.has(key) ? voice.say(key, params) : key);
  const step = (code: string): string => say(`run.step.${code}`);
  const choice = (code: string): string => say(`run.choice.${code}`);
  const measure = (code: string): string => say(`run.measure.${code}`);
  const codes: Readonly<Record<string, (code: string) => string>> = { measure, reason: choice, says: choice };
  const plain = (data: SaidDeviation['data']): Params => plainData(voice, data, { ...codes, ...faces(choice) });
  return {
    step,
    todo: (code) => say(`run.do.${code}`),
    why: (code) => say(`run.why.${code}`),
    group: (code) => say(`run.group.${code}`),
    action: (code) => say(`run.action.${code}`),
    choice,
    reason: (code) => say(`run.reason.${code}`),
    measure,
    phase: (code) => say(`run.phase.${code}`),
    timer: (code) => say(`run.timer.${code}`),
    sure: (code) => say(`run.sure.${code}`),
    sign: (code) => say(`run.sign.${code}`),
    people: (count) => say(`run.people.${count}`),
    end: (how) => say(`run.end.${how}`),
    deviation: ({ code, step: of, data }) =>
      voice.say(`run.deviation.${code}` as MessageKey, { ...plain(data), ...(of && { step: step(of) }) }),
    blocked: ({ code, steps = [], data = {} }) =>
      voice.say(`run.blocked.${code}` as MessageKey, { ...plain(data), steps: voice.list(steps.map(step)) }),
    meanwhile: ({ code, ago_s, data }) =>
      voice.say(`run.meanwhile.${code}` as MessageKey, {
        ...params,
        ...plain(data),
        ...(ago_s !== undefined && { ago: agoText(voice, ago_s) }),
      }),
    line: (line, values = {}) => voice.say(`run.${line}`, { ...params, ...values }),
    ways: (answer) => say(answer === 'differs' ? 'run.differs.ways' : 'run.not-dry.ways'),
  };
}

/** Codes that stand in the numbers of a deviation, and are answers of the run. */
function faces(choice: (code: string) => string): Record<string, (code: string) => string> {
  return { face: choice, verdict: choice, proposed: choice };
}

function paramsOf(voice: Voice, { names, numbers, people, retensionOn }: RunFacts, display: Voice): Params {
  const written = Object.entries(numbers).map(([name, { value, kind, onDisplay }]) => [
    name,
    kind === 'days'
      ? waitingText(value, voice)
      : isQuantityKind(kind)
        ? (onDisplay ? display : voice).write(value, kind)
        : voice.number(value),
  ]);
  return {
    ...names,
    ...Object.fromEntries(written),
    people: String(people),
    ...(retensionOn !== undefined && { retensionOn: voice.day(retensionOn) }),
  };
}

const kindsBySuffix = { _s: 'time', _degC: 'temperature', _Pa: 'pressure', _V: 'voltage' } as const;

/** Numbers with their units, codes with their words: `waited_s: 20` becomes `waited: "20 s"`. */
function plainData(
  voice: Voice,
  data: SaidDeviation['data'],
  words: Readonly<Record<string, (code: string) => string>>,
): Params {
  const { kind } = data;
  const entries = Object.entries(data).map(([name, value]) => {
    if (typeof value === 'string') return [name, Object.hasOwn(words, name) ? words[name]?.(value) : value];
    const suffix = Object.keys(kindsBySuffix).find((each) => name.endsWith(each)) as keyof typeof kindsBySuffix;
    if (suffix !== undefined)
      return [name.slice(0, name.length - suffix.length), voice.write(value, kindsBySuffix[suffix])];
    if (name === 'count') return [name, value];
    return [name, typeof kind === 'string' && isQuantityKind(kind) ? voice.write(value, kind) : voice.number(value)];
  });
  return Object.fromEntries(entries);
}

const minute_s = 60;

/** Whole minutes from a minute and a half on: nobody needs the seconds of what is over. */
function agoText(voice: Voice, ago_s: number): string {
  if (ago_s < 1.5 * minute_s) return voice.write(Math.max(0, Math.round(ago_s)), 'time');
  return voice.write(Math.round(ago_s / minute_s) * minute_s, 'minutes');
}
