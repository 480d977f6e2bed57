import type { MessageKey } from './messages/en.ts';
import type { Params, Voice } from './speak.ts';
import type { QuantityKind } from './units.ts';

/** What a curve shows, as the watch gives it: SI, times from switching on. */
export interface SaidWarning {
  readonly code: string;
  readonly side?: string;
  readonly data: Readonly<Record<string, number>>;
  readonly causes: readonly string[];
}

/** The words of a watched curve for one reader. */
export interface WatchWords {
  readonly title: string;
  /** What it is, in two or three words. */
  readonly short: (code: string) => string;
  /** What is seen, with its numbers as the press display shows them. */
  readonly seen: (warning: SaidWarning) => string;
  /** What it may be; empty where nobody can say. */
  readonly mayBe: (warning: SaidWarning) => string;
  readonly todo: (code: string) => string;
  readonly cause: (code: string) => string;
  /** What no curve shows. */
  readonly silent: (codes: readonly string[]) => string;
}

/**
 * The words of what a press curve shows.
 *
 * @param voice - language and units of the reader
 * @param display - how the press display shows its numbers; default: as the reader
 */
export function watchWords(voice: Voice, display: Voice = voice): WatchWords {
  const say = (key: string, params?: Params): string => (voice.has(key) ? voice.say(key, params) : key);
  const cause = (code: string): string => say(`watch.cause.${code}`);
  return {
    title: say('watch.title'),
    short: (code) => say(`watch.short.${code}`),
    seen: ({ code, side = 'both', data }) =>
      voice.say(`watch.seen.${code}` as MessageKey, {
        ...written(voice, display, data),
        side: say(`watch.side.${side}`),
      }),
    mayBe: ({ causes }) => (causes.length === 0 ? '' : say('watch.may-be', { causes: voice.list(causes.map(cause)) })),
    todo: (code) => say(`watch.todo.${code}`),
    cause,
    silent: (codes) => say('watch.silent', { causes: voice.list(codes.map((code) => say(`watch.silent.${code}`))) }),
  };
}

const kinds = { _s: 'time', _degC: 'temperature', _K: 'temperatureDifference' } as const satisfies Record<
  string,
  QuantityKind
>;

/** Numbers with their units under their names without one: `shown_degC: 60` becomes `shown: "60 °C"`. */
function written(voice: Voice, display: Voice, data: SaidWarning['data']): Params {
  const entries = Object.entries(data).map(([name, value]) => {
    const suffix = Object.keys(kinds).find((each) => name.endsWith(each)) as keyof typeof kinds | undefined;
    if (suffix === undefined) return [name, value] as const;
    const speaker = suffix === '_s' ? voice : display;
    return [name.slice(0, -suffix.length), speaker.write(value, kinds[suffix])] as const;
  });
  return Object.fromEntries(entries);
}
