import { IntlMessageFormat } from 'intl-messageformat';

/** The parts of a parsed message that this file reads; the parser numbers its kinds of element. */
interface Element {
  readonly type: number;
  readonly value?: string;
  readonly options?: Readonly<Record<string, { readonly value: readonly Element[] }>>;
}

const literal = 0;
const select = 5;
const pound = 7;

export type ArgumentUse = 'plain' | 'select';

/** Names of the values a message takes, each with how it is used: chosen by (`select`) or written out. */
export function argumentsOf(message: IntlMessageFormat): ReadonlyMap<string, ArgumentUse> {
  const found = new Map<string, ArgumentUse>();
  collect(message.getAst() as readonly Element[], found);
  return found;
}

function collect(elements: readonly Element[], found: Map<string, ArgumentUse>): void {
  for (const element of elements) {
    if (element.type === literal || element.type === pound || element.value === undefined) continue;
    if (element.type === select) found.set(element.value, 'select');
    else if (!found.has(element.value)) found.set(element.value, 'plain');
    for (const option of Object.values(element.options ?? {})) collect(option.value, found);
  }
}

/** Compiles one message. Angle brackets are text here: nothing we say is ever markup. */
export function compileMessage(text: string, language: string): IntlMessageFormat {
  return new IntlMessageFormat(text, language, {}, { ignoreTag: true });
}
