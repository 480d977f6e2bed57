import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  canonicalText,
  canonicalValue,
  dataFault,
  readStrictly,
  readTextStrictly,
  sha256Hex,
} from '../../src/log/index.ts';
import { hashesOfFirstLines, numbersOfFile } from '../vectors/es6-numbers.ts';
import { example, notNumbers, numbers, sorting } from '../vectors/rfc-8785.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

function doubleOf(bits: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
}

function codeOf(act: () => unknown): unknown {
  try {
    return act();
  } catch (cause) {
    return (cause as { code?: unknown }).code;
  }
}

const nested = (depth: number): unknown => (depth === 0 ? 1 : [nested(depth - 1)]);

describe('canonical form', () => {
  it.each(numbers)('[LOG-01] RFC 8785 appendix B: %s is written %s', (bits, text) => {
    expect(canonicalText(doubleOf(bits))).toBe(text);
  });

  it.each(notNumbers)('[LOG-02] RFC 8785 appendix B: %s is refused', (bits) => {
    expect(codeOf(() => canonicalText(doubleOf(bits)))).toBe('number-not-finite');
  });

  it('[LOG-01] RFC 8785 3.2.2: the example and its hash', () => {
    const text = canonicalText(JSON.parse(example.input));
    expect(text).toBe(example.output);
    expect(sha256Hex(text)).toBe(example.sha256);
  });

  it('[LOG-01] RFC 8785 3.2.3: names are sorted by UTF-16 units', () => {
    expect(Object.values(JSON.parse(canonicalText(JSON.parse(sorting.input))))).toHaveLength(sorting.order.length);
    const values = [...canonicalText(JSON.parse(sorting.input)).matchAll(/:"([^"]+)"/g)].map(([, value]) => value);
    expect(values).toEqual(sorting.order);
  });

  it('[LOG-01] the first million numbers of the authors of RFC 8785 are written as published', () => {
    const hash = sha256.create();
    const wanted = new Map(Object.entries(hashesOfFirstLines).map(([count, sum]) => [Number(count), sum]));
    let [count, met, lines] = [0, 0, ''];
    for (const [bits, number] of numbersOfFile()) {
      lines += `${bits},${canonicalText(number)}\n`;
      count += 1;
      if (count % 1000 > 0) continue;
      hash.update(utf8ToBytes(lines));
      lines = '';
      const sum = wanted.get(count);
      if (sum === undefined) continue;
      expect(bytesToHex(hash.clone().digest()), `first ${count} lines`).toBe(sum);
      met += 1;
      if (met === wanted.size) break;
    }
    console.log(`canonical numbers: ${count} lines, ${met} published hashes met`);
    expect(count).toBe(1_000_000);
  });

  it('[LOG-02] what would be written as something else is refused, with its place', () => {
    expect(dataFault({ a: [1, { b: Number.NaN }] })).toEqual({ code: 'number-not-finite', path: 'a[1].b' });
    expect(dataFault({ a: '\ud800' })).toEqual({ code: 'lone-surrogate', path: 'a' });
    expect(dataFault({ '\udc00': 1 })?.code).toBe('lone-surrogate');
    expect(dataFault({ a: undefined })).toEqual({ code: 'not-plain-data', path: 'a' });
    expect(dataFault(new Date(0))?.code).toBe('not-plain-data');
    expect(dataFault([1n])?.code).toBe('not-plain-data');
    expect(dataFault(nested(33))?.code).toBe('too-deep');
    expect(dataFault(nested(32))).toBeUndefined();
    expect(dataFault('\u{1f600}')).toBeUndefined();
  });

  it('[LOG-02] a name like __proto__ is data', () => {
    const value: unknown = JSON.parse('{"__proto__":{"x":1},"constructor":2}');
    expect(canonicalText(value)).toBe('{"__proto__":{"x":1},"constructor":2}');
  });

  it('[LOG-01] the canonical form of any JSON value reads back to it and is its own canonical form', () => {
    const value = fc.jsonValue({ maxDepth: 6, stringUnit: 'grapheme' });
    fc.assert(
      fc.property(value, (each) => {
        const text = canonicalText(each);
        const back: unknown = JSON.parse(text);
        expect(canonicalText(back)).toBe(text);
        expect(JSON.stringify(back)).toBe(JSON.stringify(JSON.parse(canonicalText(JSON.parse(JSON.stringify(each))))));
      }),
      runs,
    );
  });
});

describe('a text that is its own canonical form', () => {
  it('[LOG-04] is told from its neighbours, however it is found out', () => {
    const letters = fc.constantFrom(...'{}[]",:0123456789.-eE+ \\u\n\u00e9\ud800\udc00ab');
    const value = fc.jsonValue({ maxDepth: 4, stringUnit: 'grapheme' });
    fc.assert(
      fc.property(value, fc.nat(), letters, fc.boolean(), (each, at, letter, insert) => {
        const text = canonicalText(each);
        expect(canonicalValue(text)).toEqual(JSON.parse(text));
        const place = at % (text.length + 1);
        const near = text.slice(0, place) + letter + text.slice(place + (insert ? 0 : 1));
        const read = readTextStrictly(near);
        const isCanonical = 'value' in read && canonicalText(read.value) === near;
        expect(canonicalValue(near) !== undefined).toBe(isCanonical);
      }),
      runs,
    );
  });

  it('[LOG-04] names that look like indices stand in the order of their letters', () => {
    expect(canonicalValue('{"10":1,"9":2}')).toEqual({ 9: 2, 10: 1 });
    expect(canonicalValue('{"9":2,"10":1}')).toBeUndefined();
  });
});

describe('strict reader', () => {
  const bytes = (text: string) => utf8ToBytes(text);
  const cases: readonly (readonly [string, Uint8Array, string])[] = [
    ['a byte-order mark', Uint8Array.of(0xef, 0xbb, 0xbf, 0x31), 'byte-order-mark'],
    ['a byte that is no UTF-8', Uint8Array.of(0x22, 0xff, 0x22), 'not-utf8'],
    ['half a pair in UTF-8', Uint8Array.of(0x22, 0xed, 0xa0, 0x80, 0x22), 'not-utf8'],
    ['an over-long slash', Uint8Array.of(0x22, 0xc0, 0xaf, 0x22), 'not-utf8'],
    ['a name twice', bytes('{"a":1,"b":{"c":1,"c":1}}'), 'duplicate-name'],
    ['a name twice, once escaped', bytes('{"a":1,"\\u0061":2}'), 'duplicate-name'],
    ['__proto__ twice', bytes('{"__proto__":1,"__proto__":2}'), 'duplicate-name'],
    ['nothing', bytes(''), 'not-json'],
    ['NaN', bytes('{"a":NaN}'), 'not-json'],
    ['a comma too many', bytes('[1,]'), 'not-json'],
    ['two values', bytes('1 2'), 'not-json'],
    ['33 levels', bytes(`${'['.repeat(33)}${']'.repeat(33)}`), 'too-deep'],
    ['100,000 levels', bytes(`${'['.repeat(100_000)}${']'.repeat(100_000)}`), 'too-deep'],
    ['100,000 open brackets', bytes('['.repeat(100_000)), 'not-json'],
    ['a number beyond a double', bytes('[1e400]'), 'number-not-finite'],
    ['half a pair, escaped', bytes('"\\ud800x"'), 'lone-surrogate'],
    ['half a pair in a name', bytes('{"\\udfff":1}'), 'lone-surrogate'],
  ];

  it.each(cases)('[LOG-03] %s is refused', (_, given, fault) => {
    expect(readStrictly(given)).toEqual({ fault });
  });

  it('[LOG-03] colons, brackets and quotes inside strings mislead nobody', () => {
    const value = { 'a:"[{': '\\":{[', b: [':', '\\'], c: { d: '"' } };
    expect(readTextStrictly(JSON.stringify(value))).toEqual({ value });
  });

  it('[LOG-03] 32 levels are read', () => {
    expect('value' in readTextStrictly(`${'['.repeat(32)}${']'.repeat(32)}`)).toBe(true);
  });

  it('[LOG-03] any JSON value is read, and with a name given twice it is not', () => {
    const value = fc.dictionary(fc.string(), fc.jsonValue({ maxDepth: 4 }), { minKeys: 1 });
    fc.assert(
      fc.property(value, fc.nat(), (each, at) => {
        const text = JSON.stringify(each);
        expect(readTextStrictly(text)).toEqual({ value: JSON.parse(text) });
        const names = Object.keys(JSON.parse(text) as object);
        const again = JSON.stringify(names[at % names.length]);
        expect(readTextStrictly(`${text.slice(0, -1)},${again}:1}`)).toEqual({ fault: 'duplicate-name' });
      }),
      runs,
    );
  });
});
