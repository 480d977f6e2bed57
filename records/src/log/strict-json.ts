import { type DataFault, dataFault, deepest } from './canonical.ts';

/** Why the strict reader does not take a text. */
export const strictFaults = [
  'byte-order-mark',
  'not-utf8',
  'duplicate-name',
  'not-json',
  'too-deep',
  'number-not-finite',
  'lone-surrogate',
] as const;
export type StrictFault = (typeof strictFaults)[number];

/** A JSON text that means the same to every reader, or why it does not. */
export type StrictReading = { readonly value: unknown } | { readonly fault: StrictFault };

// Every engine has it; the language's own library, which is all this package is written against, does not name it.
declare const TextDecoder: new (
  label: 'utf-8',
  options: { readonly fatal: boolean; readonly ignoreBOM: boolean },
) => { decode(bytes: Uint8Array): string };

// A byte-order mark must reach us: by default the decoder swallows it, and two files would read the same.
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** UTF-8 bytes as text with nothing swallowed or replaced; undefined where they are no UTF-8. */
export function textOfUtf8(bytes: Uint8Array): string | undefined {
  try {
    return decoder.decode(bytes);
  } catch {
    return undefined;
  }
}

/**
 * Reads a JSON text and refuses whatever two readers could take differently: a byte-order mark, bytes that are no
 * UTF-8, a name given twice, numbers beyond a double, half a surrogate pair, nesting deeper than 32.
 *
 * @param bytes - the text as it is stored
 */
export function readStrictly(bytes: Uint8Array): StrictReading {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return { fault: 'byte-order-mark' };
  const text = textOfUtf8(bytes);
  return text === undefined ? { fault: 'not-utf8' } : readTextStrictly(text);
}

/** As `readStrictly`, from text. */
export function readTextStrictly(text: string): StrictReading {
  const { depth, members } = outline(text);
  const value = parsed(text);
  if (value === undefined) return { fault: 'not-json' };
  // The parser keeps the last of two equal names and says nothing; the text has more colons then than the value names.
  if (members !== membersOf(value)) return { fault: 'duplicate-name' };
  if (depth > deepest) return { fault: 'too-deep' };
  const fault = dataFault(value);
  return fault === undefined ? { value } : { fault: fault.code as Exclude<DataFault, 'not-plain-data'> };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const significant = /["[\]{}:]/g;
const endOfString = /["\\]/g;

/** Nesting and number of members of a text that is JSON, read off its brackets and colons outside strings. */
function outline(text: string): { readonly depth: number; readonly members: number } {
  let [open, depth, members] = [0, 0, 0];
  significant.lastIndex = 0;
  for (let found = significant.exec(text); found !== null; found = significant.exec(text)) {
    const mark = found[0];
    if (mark === '"') significant.lastIndex = afterString(text, found.index + 1);
    else if (mark === ':') members += 1;
    else if (mark === '[' || mark === '{') depth = Math.max(depth, ++open);
    else open -= 1;
  }
  return { depth, members };
}

function afterString(text: string, from: number): number {
  endOfString.lastIndex = from;
  for (let found = endOfString.exec(text); found !== null; found = endOfString.exec(text)) {
    if (found[0] === '"') return endOfString.lastIndex;
    endOfString.lastIndex += 1;
  }
  return text.length;
}

// Without recursion, because the nesting has not been limited yet.
function membersOf(value: unknown): number {
  let members = 0;
  const waiting: unknown[] = [value];
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (typeof next !== 'object' || next === null) continue;
    const below = Object.values(next);
    if (!Array.isArray(next)) members += below.length;
    for (const each of below) waiting.push(each);
  }
  return members;
}
