import { canonicalText, deviceOf } from '../../src/log/index.ts';
import { deviceKey } from '../log/sample-log.ts';
import { forgedExport, forgedWitness } from './forge.ts';
import { curve, fileOf, idle, packed, phone, record, tablet, whole } from './sample-record.ts';
import type { Choice } from './seeded.ts';
import type { Tampering } from './tampering.ts';

// What thieves of keys can do: not always seen, but judged alike.

const nested = (depth: number): unknown => (depth === 0 ? 1 : [nested(depth - 1)]);
const hash = '1'.repeat(64);

/** What may stand in an event that its own device signed. */
const oddFields: readonly Readonly<Record<string, unknown>>[] = [
  ...[-1, 1.5, '0', null, 10].map((seq) => ({ seq })),
  ...[hash, null, 0].map((prev) => ({ prev })),
  ...[
    '2026-02-30T00:00:00Z',
    '2026-11-24T24:00:00Z',
    '2024-02-29T00:00:00.123456789Z',
    '2026-11-25T02:00:60Z',
    '2026-11-25T02:00:00+00:00',
    '0000-01-01T00:00:00Z',
    '1999-12-31T23:59:59.9999Z',
    'yesterday',
    7,
    null,
  ].map((at) => ({ at })),
  ...[null, 'x', [null], [7], [{}], [{ sha256: hash }], [{ sha256: hash, bytes: 1, kind: 'x' }]].map((blobs) => ({
    blobs,
  })),
  ...[30, 31, 32].map((depth) => ({ body: nested(depth - 1) })),
  ...[1e21, 5e-324, 0.1, -1e-7, 123456789012345680000].map((number) => ({ body: { number } })),
  ...['x'.repeat(65_000), 'é'.repeat(32_000), 'é'.repeat(40_000), '𝄞\u2028\u0007"\\'].map((note) => ({
    body: { note },
  })),
  { body: JSON.parse('{"__proto__":{"a":1},"10":1,"9":2,"":3}') as unknown },
  { v: 2 },
  { v: '1' },
  { plant: 'elsewhere' },
  { plant: null },
  { device: deviceOf(tablet.key.publicKey) },
  { device: deviceOf(phone.key.publicKey) },
  { device: hash },
  { extra: 1 },
  { by: undefined },
  { by: undefined, at: undefined, 'at,by': 1 },
  { type: null },
  { up_ms: -1 },
  { sig: null },
  { sig: 7 },
];

async function forged(choice: Choice): Promise<Uint8Array> {
  const [first, second] = [choice.below(9), choice.below(6)];
  const [odd, alsoOdd] = [choice.of(oddFields), choice.below(3) === 0 ? choice.of(oddFields) : {}];
  const logs = [
    { ...phone, change: (n: number) => ({ ...phone.change?.(n), ...(n === first ? odd : {}) }) },
    idle,
    { ...tablet, seen: choice.below(8), change: (n: number) => (n === second ? alsoOdd : {}) },
  ];
  const { lines } = await forgedExport(logs);
  return choice.of([() => fileOf(lines), () => packed({ ...whole, lines })])();
}

const [ofPhone = []] = record.ids;
const seenPhone = { key: phone.key, ids: ofPhone };

const oddStatements: readonly Readonly<Record<string, unknown>>[] = [
  ...[0, 10, -1, 1.5, '5', 2 ** 53].map((size) => ({ size })),
  ...[hash, 'x', null].map((root) => ({ root })),
  ...[hash, 'x', null].map((head) => ({ head })),
  { plant: 'elsewhere' },
  { plant: 7 },
  { device: hash },
  { device: 'x' },
  { device: deviceOf(tablet.key.publicKey) },
  { witness: hash },
  { v: 2 },
  { extra: 1 },
  { at: 7 },
  {},
];

/** Countersignatures written by somebody with a key of their own. */
async function witnessed(choice: Choice): Promise<Uint8Array> {
  const by = choice.of([deviceKey('witness'), deviceKey('thief'), phone.key]);
  const statement = await forgedWitness(seenPhone, choice.below(10), { by, change: choice.of(oddStatements) });
  const around = choice.of([{}, {}, {}, { key: hash }, { key: 'x' }, { v: 2 }, { extra: 1 }, { statement: null }]);
  const line = canonicalText({ ...statement, ...around });
  return packed({ ...whole, witnesses: whole.witnesses.toSpliced(choice.below(6), choice.below(2), line) });
}

/** Countersignatures changed by somebody without their keys. */
function witnessChanged(choice: Choice): Uint8Array {
  const { witnesses } = whole;
  const at = choice.below(witnesses.length);
  const line = witnesses[at] ?? '';
  const bytes = Buffer.from(line);
  const place = choice.below(bytes.length);
  const changed = Buffer.from(bytes.with(place, (bytes[place] ?? 0) ^ (1 << choice.below(7)))).toString('utf8');
  const lists = [
    witnesses.with(at, changed),
    witnesses.with(at, line.replace(/"size":\d/, `"size":${choice.below(10)}`)),
    witnesses.with(at, ` ${line}`),
    witnesses.with(at, ''),
    witnesses.toSpliced(at, 1),
    [...witnesses, line],
  ];
  return packed({ ...whole, witnesses: choice.of(lists) });
}

/** Bytes beside the log that say another size than their event. */
async function blobSized(choice: Choice): Promise<Uint8Array> {
  const [named] = [...whole.blobs.keys()];
  const blobs = [{ sha256: named, bytes: choice.of([curve.length, curve.length + 1, 'x', null]), kind: 'curve' }];
  const { lines } = await forgedExport([{ ...phone, change: (n) => (n === 4 ? { blobs } : {}) }, idle, tablet]);
  return packed({ ...whole, lines });
}

export const forging: readonly Tampering[] = [
  { name: 'written anew with the keys', seen: false, change: forged },
  { name: 'witnesses with keys of their own', seen: false, change: witnessed },
  { name: 'countersignatures changed', seen: false, change: witnessChanged },
  { name: 'another size of a blob', seen: false, change: blobSized },
];
