import { zipSync } from 'fflate';
import { canonicalText } from '../../src/log/index.ts';
import { deviceKey } from '../log/sample-log.ts';
import { forgedExport, signed } from './forge.ts';
import { forging } from './forging.ts';
import { fileOf, idle, type Parts, packed, phone, record, tablet, whole } from './sample-record.ts';
import type { Choice } from './seeded.ts';

/** A way to change a record; `seen`: whoever does it without the devices' keys must be found out every time. */
export interface Tampering {
  readonly name: string;
  readonly seen: boolean;
  readonly change: (choice: Choice) => Promise<Uint8Array> | Uint8Array;
}

const text = (line: string | Uint8Array): string => Buffer.from(line).toString('utf8');
const withLines = (lines: readonly (string | Uint8Array)[]): Parts => ({ ...whole, lines });
const asFile = (choice: Choice, lines: readonly (string | Uint8Array)[]): Uint8Array =>
  choice.of([() => fileOf(lines), () => packed(withLines(lines)), () => packed(withLines(lines), 0)])();

function flipped(bytes: Uint8Array, choice: Choice, from = 0): Uint8Array {
  const at = from + choice.below(bytes.length - from);
  return Uint8Array.from(bytes).with(at, (bytes[at] ?? 0) ^ (1 << choice.below(8)));
}

/** One line of the log changed, as text. */
function lineChanged(choice: Choice, change: (line: string) => string | Uint8Array): Uint8Array {
  const at = choice.below(whole.lines.length);
  return asFile(
    choice,
    whole.lines.map((line, i) => (i === at ? change(text(line)) : line)),
  );
}

const other = await forgedExport([{ ...phone, change: (n) => (n > 2 ? { by: 'x' } : {}) }, idle, tablet]);
const elsewhere = await forgedExport([{ ...phone, change: () => ({ plant: 'elsewhere' }) }]);
const stranger = await forgedExport([{ key: deviceKey('stranger'), size: 9 }]);

/** Another text for the same value, or one that readers take differently. */
const spellings: readonly ((line: string) => string | Uint8Array)[] = [
  (line) => `\ufeff${line}`,
  (line) => line.replace('{', '{ '),
  (line) => `${line} `,
  (line) => `${line}\r`,
  (line) => line.replace(/"([a-z])/, (_, letter: string) => `"\\u00${letter.charCodeAt(0).toString(16)}`),
  (line) => line.replace('{', `{"v":1,`),
  (line) => line.replace(/\{("[a-z]+":)/, '{$1null,$1'),
  (line) => line.replace('"v":1', '"v":1.0'),
  (line) => line.replace('"v":1', '"v":1e0'),
  (line) => line.replace('"v":1', '"v":01'),
  (line) => line.replace('"v":1', '"v":-0'),
  (line) => line.replace('"v":1', '"v":1e999'),
  (line) => line.replace(/"v":1\}$/, '"v":1,"w":"\\ud800"}'),
  (line) => line.replace(/"v":1\}$/, '"v":1,"__proto__":1}'),
  (line) => line.replace(/"v":1\}$/, `"v":1,"w":${'['.repeat(40)}${']'.repeat(40)}}`),
  (line) => Buffer.concat([Buffer.from(line), Buffer.from([0xff])]),
  (line) => Buffer.concat([Buffer.from([0xed, 0xa0, 0x80]), Buffer.from(line)]),
  (line) => line.replaceAll('ü', 'u\u0308'),
  () => '',
  () => 'null',
  () => '[]',
  () => '{}',
  () => '7',
  (line) => line.slice(0, -1),
  (line) => `${line}\n`,
];

/** Another value for a field, without a signature over it. */
function edited(line: string, choice: Choice): string {
  const value = JSON.parse(line) as Record<string, unknown>;
  const name = choice.of(Object.keys(value));
  const values = [0, 1, -1, 7.5, null, true, '', 'x', [], {}, '0'.repeat(64), '2026-11-25T02:00:00Z', undefined];
  const copy = { ...value, [name]: choice.of(values) };
  if (choice.below(4) === 0) Object.assign(copy, { extra: 1 });
  return canonicalText(JSON.parse(JSON.stringify(copy)));
}

/** A signature in another form, or with another scalar or point. */
function resigned(line: string, choice: Choice): string {
  const { sig = '' } = JSON.parse(line) as { sig?: string };
  if (sig === '') return `${line}x`;
  const order = 2n ** 252n + 27742317777372353535851937790883648493n;
  const reversed = (hex: string) => (hex.match(/../g) ?? []).reverse().join('');
  const s = BigInt(`0x${reversed(sig.slice(64))}`);
  const beyond = reversed((s + order).toString(16).padStart(64, '0'));
  const low = 'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a';
  const forms = [
    sig.slice(0, 64) + beyond,
    sig.toUpperCase().replace(/^[0-9]*$/, 'x'),
    sig.slice(0, -2),
    `${sig}00`,
    `${low}${sig.slice(64)}`,
    `${'ff'.repeat(32)}${sig.slice(64)}`,
    `${'edffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f'}${sig.slice(64)}`,
    '0'.repeat(128),
    sig.slice(64) + sig.slice(0, 64),
  ];
  return line.replace(sig, choice.of(forms));
}

function moved(choice: Choice): readonly (string | Uint8Array)[] {
  const { lines } = whole;
  const [i, j] = [choice.below(lines.length), choice.below(lines.length)];
  const kind = choice.below(4);
  if (kind === 0) return lines.toSpliced(i, 1);
  if (kind === 1) return lines.toSpliced(j, 0, lines[i] ?? '');
  if (kind === 2) return lines.slice(0, i);
  return i === j ? lines.toSpliced(i, 1) : lines.with(i, lines[j] ?? '').with(j, lines[i] ?? '');
}

function grafted(choice: Choice): readonly (string | Uint8Array)[] {
  const from = choice.of([other, elsewhere, stranger]).lines;
  // Up to the third event the branch is the same log.
  const at = 4 + choice.below(Math.min(from.length, whole.lines.length) - 4);
  const line = from[at] ?? '';
  const kinds = [
    whole.lines.with(at, line),
    whole.lines.toSpliced(at, 0, line),
    [...whole.lines.slice(0, at), ...from.slice(at)],
  ];
  return from === other.lines ? (kinds[choice.below(2)] ?? []) : choice.of(kinds);
}

/** The header changed; by whoever has the first key, with a trailer that means it. */
async function headed(choice: Choice): Promise<Uint8Array> {
  const header = JSON.parse(text(whole.lines[0] ?? '')) as { keys: string[] };
  const [a = '', b = '', c = ''] = header.keys;
  const low = 'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a';
  const keys = choice.of([
    [a, c, b],
    [c, b, a],
    [a, b],
    [a],
    [],
    [a, b, c, low],
    [low, b, c],
    [a, b, c, c],
    [a, b, 7],
    'x',
  ]);
  const change = choice.of([{ keys }, { keys }, { plant: 'y' }, { plant: 7 }, { kind: 'log' }, { v: 2 }, { extra: 1 }]);
  const { lines } = await forgedExport([phone, idle, tablet], { header: change });
  const given = [
    lines[0] ?? '',
    ...whole.lines.slice(1, -1),
    choice.of([lines.at(-1), text(whole.lines.at(-1) ?? '')]) ?? '',
  ];
  return asFile(choice, given);
}

/** The trailer changed by whoever has the first key. */
async function ended(choice: Choice): Promise<Uint8Array> {
  const [a = {}, b = {}, c = {}] = record.checkpoints;
  const { sig: _, ...said } = a as Record<string, unknown>;
  const numbers = [0, 1, 8, 10, 7.5, -1, '9', null];
  const changes = [
    { size: choice.of(numbers) },
    { root: '1'.repeat(64) },
    { head: '1'.repeat(64) },
    { root: 'x' },
    { plant: 'y' },
  ];
  const changed = await signed('checkpoint', { ...said, ...choice.of(changes) }, phone.key);
  const lists = [
    [changed, b, c],
    [a, b],
    [],
    [a, b, c, c],
    [b, a, c],
    [a, b, changed],
    [null, b, c],
    [a, 7, c],
    {},
    [{}, b, c],
  ];
  const trailer = choice.of([
    { checkpoints: choice.of(lists) },
    { checkpoints: choice.of(lists) },
    { header: 'x' },
    { v: 2 },
    { extra: 1 },
  ]);
  const { lines } = await forgedExport([phone, idle, tablet], { trailer });
  return asFile(choice, [...whole.lines.slice(0, -1), lines.at(-1) ?? '']);
}

/** An archive changed where it is packed. */
function repacked(choice: Choice): Uint8Array {
  const [[name = '', bytes = new Uint8Array()] = []] = [...whole.blobs].slice(choice.below(2));
  const changed: readonly (() => Uint8Array)[] = [
    () => packed({ ...whole, blobs: new Map(whole.blobs).set(name, flipped(bytes, choice)) }, choice.of([0, 6])),
    () => packed({ ...whole, blobs: new Map([...whole.blobs].filter(([each]) => each !== name)) }),
    () => packed({ ...whole, blobs: new Map(whole.blobs).set('a'.repeat(64), bytes) }),
    () => packed({ ...whole, blobs: new Map(whole.blobs).set('not-a-hash', bytes) }),
    () => zipSync({ 'log.jsonl': fileOf(whole.lines), 'blobs/': new Uint8Array(), 'readme.txt': bytes }),
    () => zipSync({ 'log.jsonl': fileOf(whole.lines), [choice.of(['../x', '/x', 'c:x', 'a\\..\\b', 'a\0'])]: bytes }),
    () => zipSync({ 'log.jsonl': fileOf(whole.lines), zeros: new Uint8Array(200_000) }),
    () => zipSync({ 'events.jsonl': fileOf(whole.lines) }),
    () => Uint8Array.from([...packed(whole), ...choice.bytes(choice.below(30))]),
    () => Uint8Array.from([...choice.bytes(1 + choice.below(30)), ...packed(whole)]),
  ];
  return choice.of(changed)();
}

/** A field of the archive's directory set to something else. */
function announced(choice: Choice): Uint8Array {
  const bytes = Uint8Array.from(packed(whole, choice.of([0, 6])));
  const places: number[] = [];
  for (let at = bytes.indexOf(0x50); at >= 0; at = bytes.indexOf(0x50, at + 1))
    if (bytes[at + 1] === 0x4b && bytes[at + 2] === 1 && bytes[at + 3] === 2) places.push(at);
  const at = choice.of(places) + choice.of([8, 10, 16, 20, 24, 28, 30, 32, 41, 42, 46]);
  return bytes.with(at, choice.of([0, 1, 8, 0xa0, 0xff, choice.below(256)]));
}

export const tamperings: readonly Tampering[] = [
  { name: 'a bit of the log', seen: true, change: (choice) => flipped(fileOf(whole.lines), choice) },
  { name: 'a bit of the archive', seen: false, change: (choice) => flipped(packed(whole, choice.of([0, 6])), choice) },
  { name: 'cut at a byte', seen: true, change: (choice) => fileOf(whole.lines).subarray(0, -1 - choice.below(9000)) },
  {
    name: 'archive cut at a byte',
    seen: true,
    change: (choice) => packed(whole).subarray(0, -1 - choice.below(packed(whole).length - 1)),
  },
  { name: 'lines moved', seen: true, change: (choice) => asFile(choice, moved(choice)) },
  { name: 'lines grafted', seen: true, change: (choice) => asFile(choice, grafted(choice)) },
  { name: 'another spelling', seen: false, change: (choice) => lineChanged(choice, choice.of(spellings)) },
  { name: 'a field edited', seen: false, change: (choice) => lineChanged(choice, (line) => edited(line, choice)) },
  {
    name: 'a signature rewritten',
    seen: true,
    change: (choice) => lineChanged(choice, (line) => resigned(line, choice)),
  },
  { name: 'another header', seen: true, change: headed },
  { name: 'another trailer', seen: true, change: ended },
  { name: 'repacked', seen: false, change: repacked },
  { name: 'announced otherwise', seen: false, change: announced },
  ...forging,
];
