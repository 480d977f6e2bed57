import { Refusal } from '@loopwright/engine/refusal';

/** Largest input of a topic; far above ten thousand pulleys. */
export const largestInput_bytes = 20_000_000;

/**
 * Reads a JSON text.
 * @throws Refusal `not-json` with the line and column where reading stopped, and what stood there
 */
export function readJson(text: string): unknown {
  const bare = text.replace(/^\uFEFF/, '');
  try {
    return JSON.parse(bare);
  } catch {
    throw new Refusal('not-json', '', stopOf(bare));
  }
}

/** Refuses an input that is too large before anybody reads it. */
export function checkSize(size_bytes: number): void {
  if (size_bytes > largestInput_bytes)
    throw new Refusal('too-large', '', { value: size_bytes, max: largestInput_bytes, unit: 'bytes' });
}

/** Where a text stops being JSON: its line and column, and the word found there. */
function stopOf(text: string): { line: number; column: number; found: string } {
  const at = firstWrong(text);
  const before = text.slice(0, at).split('\n');
  const found = /^[\w.+-]+/.exec(text.slice(at, at + 40))?.[0] ?? text.slice(at, at + 1);
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1, found };
}

const token =
  /[ \t\n\r]*(?:([{}[\],:])|("(?:[ !#-[\]-\uFFFF]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|true\b|false\b|null\b))/y;

type Expecting = 'value' | 'first-value' | 'key' | 'first-key' | 'colon' | 'comma' | 'end';

// Engines word their own messages differently and some give no place, so the place is found here.
function firstWrong(text: string): number {
  const open: string[] = [];
  let expecting: Expecting = 'value';
  token.lastIndex = 0;
  for (;;) {
    const start = token.lastIndex;
    const match = token.exec(text);
    const at = start + (/^[ \t\n\r]*/.exec(text.slice(start, start + 10_000))?.[0].length ?? 0);
    if (match === null) return at;
    const next = step(expecting, match[1] ?? (match[2]?.startsWith('"') ? 'string' : 'scalar'), open);
    if (next === undefined) return at;
    expecting = next;
  }
}

const afterValue = (open: readonly string[]): Expecting => (open.length === 0 ? 'end' : 'comma');

function step(expecting: Expecting, found: string, open: string[]): Expecting | undefined {
  const wantsValue = expecting === 'value' || expecting === 'first-value';
  if (wantsValue && found === '{') return push(open, '}', 'first-key');
  if (wantsValue && found === '[') return push(open, ']', 'first-value');
  if (wantsValue && (found === 'string' || found === 'scalar')) return afterValue(open);
  if ((expecting === 'key' || expecting === 'first-key') && found === 'string') return 'colon';
  if (expecting === 'colon' && found === ':') return 'value';
  if (expecting === 'comma' && found === ',') return open.at(-1) === '}' ? 'key' : 'value';
  const mayClose = expecting === 'comma' || expecting === 'first-key' || expecting === 'first-value';
  if (mayClose && found === open.at(-1)) {
    open.pop();
    return afterValue(open);
  }
  return undefined;
}

function push(open: string[], close: string, next: Expecting): Expecting {
  open.push(close);
  return next;
}
