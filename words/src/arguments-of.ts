import { type Formatters, IntlMessageFormat } from 'intl-messageformat';
import type { Language } from './language.ts';
import { numberText } from './number-text.ts';

/** The parts of a parsed message that this file reads; the parser numbers its kinds of element. */
interface Element {
  readonly type: number;
  readonly value?: string;
  readonly options?: Readonly<Record<string, { readonly value: readonly Element[] }>>;
}

const literal = 0;
const select = 5;
const plural = 6;
const pound = 7;

export type ArgumentUse = 'plain' | 'select' | 'plural';

/** Names of the values a message takes, each with how it is used: chosen by, counted by, or written out. */
export function argumentsOf(message: IntlMessageFormat): ReadonlyMap<string, ArgumentUse> {
  const found = new Map<string, ArgumentUse>();
  collect(message.getAst() as readonly Element[], found);
  return found;
}

function collect(elements: readonly Element[], found: Map<string, ArgumentUse>): void {
  for (const element of elements) {
    if (element.type === literal || element.type === pound || element.value === undefined) continue;
    if (element.type === select) found.set(element.value, 'select');
    else if (element.type === plural) found.set(element.value, 'plural');
    else if (!found.has(element.value)) found.set(element.value, 'plain');
    for (const option of Object.values(element.options ?? {})) collect(option.value, found);
  }
}

// Asking the platform which of its locales is meant costs a phone a tenth of its start, and nothing here depends on it.
IntlMessageFormat.resolveLocale = () => undefined;

/** Compiles one message. Angle brackets are text here: nothing we say is ever markup. */
export function compileMessage(text: string, language: Language): IntlMessageFormat {
  return new IntlMessageFormat(text, language, {}, { ignoreTag: true, formatters: formatters(language) });
}

/**
 * The form of a word that a whole number asks for, the same in all our languages: one, else other.
 *
 * @source Unicode CLDR, plural rules of en, de and es; their form for whole millions, `many`, no message has
 */
export const pluralForm = (count: number): 'one' | 'other' => (count === 1 ? 'one' : 'other');

// The counter `#` of a plural is written like every other number, not by the platform's locale data.
function formatters(language: Language): Formatters {
  const format = (value: number) => numberText(value, { language, digits: 0 });
  return {
    getNumberFormat: () => ({ format }) as unknown as Intl.NumberFormat,
    getDateTimeFormat: (...options) => new Intl.DateTimeFormat(...options),
    getPluralRules: () => ({ select: pluralForm }) as unknown as Intl.PluralRules,
  };
}
