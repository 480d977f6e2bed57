#!/usr/bin/env node
// Checks an exported record by itself: one file, no library, nothing of the program that wrote the record.
// What it checks, in which order and by which rules stands in records/SPEC.md; a rule's number stands beside its code.
//
//   node verify-record.mjs FILE.jsonl|FILE.zip [--witnesses FILE] [--json]      exit 0 only if all of it holds
//   import { verifyRecord } from './verify-record.mjs';                         in a browser, on the bytes of a file

const node = globalThis.process?.versions?.node ? await import('node:crypto') : undefined;
const encoder = new TextEncoder();
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
const noEvent = '0'.repeat(64);
const emptyRoot = 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855';

const hex = (bytes) => Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
const unhex = (text) => Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
const isHash = (value) => typeof value === 'string' && /^[0-9a-f]{64}$/.test(value);

async function sha256(bytes) {
  if (node) return node.createHash('sha256').update(bytes).digest('hex');
  return hex(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)));
}

// ---- Text: LOG-01 … 04 ----

/** The canonical form of a value, at its top without the field `omit`; throws for what has none. */
function canonical(value, omit, depth = 1) {
  if (typeof value === 'string' && !value.isWellFormed()) throw new Error('half a letter');
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (depth > 32) throw new Error('too deep');
  if (Array.isArray(value)) return `[${value.map((each) => canonical(each, undefined, depth + 1)).join()}]`;
  const names = Object.keys(value).filter((name) => name !== omit);
  return `{${names
    .sort()
    .map((name) => `${canonical(name)}:${canonical(value[name], undefined, depth + 1)}`)
    .join()}}`;
}

/** The value of a line, or undefined where the line is not its value's one text. */
function readLine(line) {
  try {
    const value = JSON.parse(decoder.decode(line));
    // Numbers too large for a double read as infinite, which writes as null: the texts differ.
    return canonical(value) === decoder.decode(line) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Lines of a file; what follows the last line end is a line that cannot be read. */
function linesOf(bytes) {
  const lines = [];
  for (let start = 0; start < bytes.length; ) {
    const end = bytes.indexOf(0x0a, start);
    lines.push(end < 0 ? undefined : bytes.subarray(start, end));
    start = end < 0 ? bytes.length : end + 1;
  }
  return lines;
}

/** LOG-35: the first field missing, one too many, or `v` of another version; '' for what has no fields. */
function wrongField(value, names) {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return '';
  const different = [
    ...Object.keys(value).filter((name) => !names.includes(name)),
    ...names.filter((name) => !Object.hasOwn(value, name)),
  ];
  return different.sort()[0] ?? (value.v === 1 ? undefined : 'v');
}

// ---- Signatures: LOG-20, 22, 31 ----

const P = 2n ** 255n - 19n;
const L = 2n ** 252n + 27742317777372353535851937790883648493n;
const Y8 = 0x7a03ac9277fdc74ec6cc392cfa53202a0f67100d760b3cba4fd83d3d706a17c7n;
const littleEndian = (bytes) => BigInt(`0x${hex(bytes.toReversed())}`);

/** Whether a point is written in the one right way and has not a low order. */
function isOrdinary(point) {
  const y = littleEndian(point) & (2n ** 255n - 1n);
  return y < P && ![0n, 1n, P - 1n, Y8, P - Y8].includes(y);
}

async function ed25519(message, signature, key) {
  try {
    if (!node) {
      const imported = await crypto.subtle.importKey('raw', key, 'Ed25519', false, ['verify']);
      return await crypto.subtle.verify('Ed25519', imported, signature, message);
    }
    const der = unhex(`302a300506032b6570032100${hex(key)}`);
    return node.verify(
      null,
      message,
      node.createPublicKey({ key: Buffer.from(der), format: 'der', type: 'spki' }),
      signature,
    );
  } catch {
    return false;
  }
}

/** Whether `thing.sig` is the signature of the thing by the key in hex. */
async function isSigned(kind, thing, key) {
  if (typeof thing.sig !== 'string' || !/^[0-9a-f]{128}$/.test(thing.sig)) return false;
  const [signature, publicKey] = [unhex(thing.sig), unhex(key)];
  if (littleEndian(signature.subarray(32)) >= L || !isOrdinary(signature.subarray(0, 32)) || !isOrdinary(publicKey))
    return false;
  return ed25519(encoder.encode(`splice-record/${kind}/1\0${canonical(thing, 'sig')}`), signature, publicKey);
}

// ---- Tree: LOG-10 ----

const parent = (left, right) => sha256(unhex(`01${left}${right}`));

/** Adds a leaf to the roots of the full subtrees of `size` leaves, largest first. */
async function grow(peaks, size, leaf) {
  let top = leaf;
  for (let rest = size; rest % 2 === 1; rest = (rest - 1) / 2) top = await parent(peaks.pop(), top);
  peaks.push(top);
}

async function rootOf(peaks) {
  let root = peaks.at(-1) ?? emptyRoot;
  for (const left of peaks.slice(0, -1).reverse()) root = await parent(left, root);
  return root;
}

// ---- Log: LOG-33 … 35, 70 … 77 ----

const eventFields = [
  'v',
  'plant',
  'device',
  'seq',
  'prev',
  'at',
  'boot',
  'up_ms',
  'by',
  'type',
  'body',
  'blobs',
  'sig',
];
const markFields = ['v', 'plant', 'device', 'size', 'root', 'head', 'at', 'sig'];
const failed = (verdict, place = {}) => ({
  verdict,
  ...Object.fromEntries(Object.entries(place).filter(([, value]) => value !== undefined && value !== '')),
});

/** A moment in UTC that exists, to the millisecond; else NaN, which is before and after nothing. */
function milliseconds(at) {
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,9})?Z$/.test(typeof at === 'string' ? at : '')) return Number.NaN;
  const time = Date.parse(at);
  const back = Number.isNaN(time) ? '' : new Date(time).toISOString();
  return back.slice(0, 19) === at.slice(0, 19) ? time : Number.NaN;
}

const isEventLine = (line) => line !== undefined && line.length <= 65_536;

/** An event by itself and against its log; the first failure, or undefined. */
async function eventFailure(value, log, plant) {
  if (value === undefined) return failed('not-canonical');
  const field = wrongField(value, eventFields);
  if (field !== undefined) return failed('bad-envelope', { field });
  if (value.plant !== plant) return failed('wrong-plant');
  if (value.device !== log.device) return failed('wrong-device');
  if (!(await isSigned('event', value, log.key))) return failed('bad-signature');
  if (value.seq !== log.size) return failed('sequence-gap');
  return value.prev === log.head ? undefined : failed('broken-link');
}

/** Reads header, events and trailer; fills `found` as it goes and returns the first failure. */
async function readLog(lines, found, spoken) {
  const header = lines[0] && readLine(lines[0]);
  if (header === undefined) return failed('not-canonical', { at: 0 });
  const field = wrongField(header, ['v', 'kind', 'plant', 'keys']) ?? headerFault(header);
  if (field !== undefined) return failed('bad-envelope', { at: 0, field });
  found.plant = header.plant;
  for (const key of header.keys)
    found.logs.push({
      key,
      device: await sha256(unhex(key)),
      size: 0,
      head: noEvent,
      peaks: [],
      marks: new Map(),
      witnessed: 0,
      seen: new Map(),
    });
  let current = 0;
  for (let at = 1; at < lines.length - 1; at++) {
    const event = isEventLine(lines[at]) ? readLine(lines[at]) : undefined;
    const next = found.logs.findIndex(({ device }, i) => i > current && device === event?.device);
    const early = await eventFailure(event, found.logs[current], header.plant);
    const goesOn = early?.verdict !== 'wrong-device' || next < 0;
    if (!goesOn) current = next;
    const failure = goesOn ? early : await eventFailure(event, found.logs[current], header.plant);
    if (failure !== undefined) return { ...failure, at };
    await append(found, found.logs[current], { event, at, spoken });
  }
  return readTrailer(lines.at(-1), Math.max(lines.length - 1, 1), { lines, found });
}

function headerFault({ kind, keys, plant }) {
  if (kind !== 'export') return 'kind';
  if (!Array.isArray(keys) || keys.length === 0 || !keys.every(isHash) || new Set(keys).size < keys.length)
    return 'keys';
  return typeof plant === 'string' ? undefined : 'plant';
}

async function append(found, log, { event, at, spoken }) {
  if (milliseconds(event.at) < milliseconds(log.lastAt)) found.warnings.push({ code: 'clock-back', at });
  log.head = await sha256(encoder.encode(`\0${canonical(event, 'sig')}`));
  await grow(log.peaks, log.size, log.head);
  Object.assign(log, { size: log.size + 1, lastAt: event.at });
  if (spoken.has(log.size)) log.marks.set(log.size, { root: await rootOf(log.peaks), head: log.head });
  for (const blob of Array.isArray(event.blobs) ? event.blobs : [])
    if (isHash(blob?.sha256) && Object.hasOwn(blob, 'bytes'))
      found.named.push({ at, sha256: blob.sha256, bytes: blob.bytes });
}

async function readTrailer(line, at, { lines, found }) {
  const value = lines.length > 1 && line ? readLine(line) : undefined;
  if (value === undefined) return failed('not-canonical', { at });
  if (isEventLine(line) && wrongField(value, eventFields) === undefined) return failed('truncated', { at: at + 1 });
  const field =
    wrongField(value, ['v', 'header', 'checkpoints', 'sig']) ??
    (Array.isArray(value.checkpoints) ? undefined : 'checkpoints');
  if (field !== undefined) return failed('bad-envelope', { at, field });
  if (!(await isSigned('export', value, found.logs[0].key))) return failed('bad-signature', { at });
  if (value.header !== (await sha256(lines[0]))) return failed('broken-link', { at });
  return checkpointFailure(value.checkpoints, found, at);
}

/** LOG-41 … 43, 76: each log against its checkpoint. */
async function checkpointFailure(checkpoints, { plant, logs, warnings }, at) {
  for (const [i, log] of logs.entries()) {
    const given = checkpoints[i];
    const place = { at: typeof given?.size === 'number' ? given.size : undefined, device: log.device };
    if (i >= checkpoints.length) return failed('bad-checkpoint', { device: log.device });
    const field = wrongField(given, markFields) ?? ownerFault(given, plant, log.device) ?? markFault(given);
    if (field !== undefined) return failed('bad-checkpoint', { ...place, field });
    if (!(await isSigned('checkpoint', given, log.key))) return failed('bad-checkpoint', { ...place, field: 'sig' });
    const failure = contradiction(given, log);
    if (failure !== undefined) return failure;
    if (i === 0 && given.size < log.size) return failed('bad-checkpoint', { ...place, field: 'size' });
    Object.assign(log, { witnessed: given.size, code: await cardCode(given) });
  }
  if (checkpoints.length > logs.length) return failed('bad-checkpoint', { at, field: 'checkpoints' });
  let line = 1;
  for (const { size, witnessed } of logs) {
    if (witnessed < size) warnings.push({ code: 'not-witnessed', at: line + witnessed });
    line += size;
  }
  return undefined;
}

const ownerFault = (said, plant, device) =>
  said.plant !== plant ? 'plant' : said.device !== device ? 'device' : undefined;

function markFault({ size, root, head }) {
  if (!Number.isSafeInteger(size) || size < 0) return 'size';
  if (!isHash(root) || (size === 0 && root !== emptyRoot)) return 'root';
  return isHash(head) && (size > 0 || head === noEvent) ? undefined : 'head';
}

function contradiction(said, log) {
  if (said.size > log.size) return failed('truncated', { at: log.size, witnessed: said.size, device: log.device });
  const mark = said.size === 0 ? { root: emptyRoot, head: noEvent } : log.marks.get(said.size);
  const isSame = mark?.root === said.root && mark.head === said.head;
  return isSame ? undefined : failed('history-rewritten', { at: said.size, device: log.device });
}

/** LOG-46. */
async function cardCode(checkpoint) {
  const bits = BigInt(`0x${(await sha256(encoder.encode(canonical(checkpoint)))).slice(0, 20)}`);
  const digit = (i) => '0123456789ABCDEFGHJKMNPQRSTVWXYZ'[Number((bits >> BigInt(75 - 5 * i)) & 31n)];
  return Array.from({ length: 16 }, (_, i) => (i % 4 === 0 && i > 0 ? '-' : '') + digit(i)).join('');
}

// ---- Beside the log: LOG-86, 88, 89 ----

async function blobFailure({ named, warnings }, { blobs, others }) {
  let failure;
  for (const { at, sha256: blob, bytes } of named) {
    const given = blobs.get(blob);
    if (given === undefined) warnings.push({ code: 'blob-missing', at, blob });
    else if ((await sha256(given)) !== blob) failure ??= failed('blob-changed', { at, blob, field: 'sha256' });
    else if (given.length !== bytes) failure ??= failed('blob-changed', { at, blob, field: 'bytes' });
  }
  const known = new Set(named.map((each) => each.sha256));
  for (const blob of [...blobs.keys()].sort()) if (!known.has(blob)) warnings.push({ code: 'blob-unnamed', blob });
  for (const name of others) warnings.push({ code: 'file-unknown', name });
  return failure;
}

async function witnessFailure(lines, { plant, logs, warnings }) {
  const elsewhere = [];
  let failure;
  for (const [at, line] of lines.entries()) {
    const value = line && readLine(line);
    const field = value === undefined ? '' : await witnessFault(value, plant);
    if (field !== undefined) failure = failed('bad-witness', { at, field });
    const log = failure ? undefined : logs.find(({ device }) => device === value.statement.device);
    const said = log && contradiction(value.statement, log);
    if (said) failure = { ...said, witness: at };
    if (failure) break;
    if (log)
      log.seen.set(value.statement.witness, Math.max(log.seen.get(value.statement.witness) ?? 0, value.statement.size));
    else elsewhere.push({ code: 'witness-elsewhere', at });
  }
  warnings.push(...elsewhere);
  return failure;
}

async function witnessFault(value, plant) {
  const field = wrongField(value, ['key', 'statement', 'v']) ?? (isHash(value.key) ? undefined : 'key');
  if (field !== undefined) return field;
  const { statement, key } = value;
  const names = wrongField(statement, [...markFields, 'witness']);
  if (names !== undefined) return names === '' ? 'statement' : `statement.${names}`;
  if (typeof statement.plant !== 'string') return 'statement.plant';
  if (!isHash(statement.device)) return 'statement.device';
  const mark = markFault(statement);
  if (mark !== undefined) return `statement.${mark}`;
  if (statement.witness !== (await sha256(unhex(key))) || statement.witness === statement.device)
    return 'statement.witness';
  if (!(await isSigned('witness', statement, key))) return 'statement.sig';
  return statement.plant === plant ? undefined : 'statement.plant';
}

// ---- Archive: LOG-85, 87 ----

class Refused extends Error {}
const refuse = (code) => {
  throw new Refused(code);
};

/** Log, blobs and countersignatures of an archive; of the log alone, itself. Nothing is unpacked before all is looked at. */
async function contentOf(bytes) {
  if (bytes.length > 512 * 2 ** 20) refuse('file-too-large');
  if (bytes[0] === 0x7b) return { log: bytes, blobs: new Map(), others: [] };
  const entries = directoryOf(bytes);
  const leaves = (name) => /^[/\\]|^[a-z]:|\0/i.test(name) || name.split(/[/\\]/).includes('..');
  if (entries.length > 10_000) refuse('file-many-entries');
  if (entries.reduce((sum, { size }) => sum + size, 0) > 512 * 2 ** 20) refuse('file-too-large');
  if (entries.some(({ size, packed }) => size > 100 * Math.max(packed.length, 1))) refuse('file-ratio');
  if (entries.some(({ name, isLink }) => isLink || leaves(name))) refuse('file-path');
  if (new Set(entries.map(({ name }) => name)).size < entries.length) refuse('file-no-archive');
  if (!entries.some(({ name }) => name === 'log.jsonl')) refuse('file-no-log');
  const content = { blobs: new Map(), others: [] };
  for (const entry of entries) {
    const [, blob] = /^blobs\/([0-9a-f]{64})$/.exec(entry.name) ?? [];
    if (blob !== undefined) content.blobs.set(blob, await unpack(entry));
    else if (entry.name === 'log.jsonl') content.log = await unpack(entry);
    else if (entry.name === 'witnesses.jsonl') content.witnesses = await unpack(entry);
    else if (!entry.name.endsWith('/') || entry.size > 0) content.others.push(entry.name);
  }
  return content;
}

/** What the directory at the end of an archive announces (PKWARE APPNOTE 6.3, 4.3.7, 4.3.12, 4.3.16). */
function directoryOf(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const [u16, u32] = [(at) => view.getUint16(at, true), (at) => view.getUint32(at, true)];
  try {
    let end = bytes.length - 22;
    while (u32(end) !== 0x06054b50) if (--end < bytes.length - 22 - 0xffff) refuse('file-no-archive');
    const entries = [];
    let at = u32(end + 16);
    for (let i = 0; i < u16(end + 10); i++) {
      const [method, packed, size, nameLength, local] = [
        u16(at + 10),
        u32(at + 20),
        u32(at + 24),
        u16(at + 28),
        u32(at + 42),
      ];
      const name = decoder.decode(bytes.subarray(at + 46, at + 46 + nameLength));
      const start = local + 30 + u16(local + 26) + u16(local + 28);
      const isPlain = u32(at) === 0x02014b50 && u32(local) === 0x04034b50 && (u16(at + 8) & 1) === 0;
      const isStored = method === 0 && packed === size;
      if (!isPlain || !(isStored || method === 8) || start + packed > bytes.length) refuse('file-no-archive');
      entries.push({
        name,
        isStored,
        size,
        crc: u32(at + 16),
        isLink: u32(at + 38) >>> 28 === 0xa,
        packed: bytes.subarray(start, start + packed),
      });
      at += 46 + nameLength + u16(at + 30) + u16(at + 32);
    }
    return at > end ? refuse('file-no-archive') : entries;
  } catch {
    return refuse('file-no-archive');
  }
}

/** Unpacks no more than was announced; of packed files size and checksum must be the announced ones. */
async function unpack({ isStored, packed, size, crc }) {
  if (isStored) return packed;
  const out = new Uint8Array(size);
  let length = 0;
  try {
    for await (const piece of new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw'))) {
      if (length + piece.length > size) refuse('file-no-archive');
      out.set(piece, length);
      length += piece.length;
    }
  } catch {
    // What had come by then is judged by its size and checksum.
  }
  return length === size && crc32(out) === crc ? out : refuse('file-no-archive');
}

function crc32(bytes) {
  let crc = -1;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ -1) >>> 0;
}

// ---- The whole ----

/**
 * Checks an exported file: `{ verdict: 'ok' }`, or the first thing that does not hold and where; `{ refused }` for what
 * is no such file. Beside it: plant, logs with size, head, root, code and how many others saw them, warnings.
 */
export async function verifyRecord(bytes, { witnesses } = {}) {
  const found = { logs: [], named: [], warnings: [] };
  try {
    const content = await contentOf(bytes);
    const statements = linesOf(witnesses ?? content.witnesses ?? new Uint8Array());
    const lines = linesOf(content.log);
    const sizes = [...statements, lines.at(-1)].flatMap((line) => sizesIn(line && readLine(line)));
    const failure =
      (await readLog(lines, found, new Set(sizes))) ??
      (await blobFailure(found, content)) ??
      (await witnessFailure(statements, found));
    return { verdict: 'ok', ...failure, ...(await summary(found)) };
  } catch (cause) {
    if (cause instanceof Refused) return { verdict: 'refused', code: cause.message, logs: [], warnings: [] };
    throw cause;
  }
}

/** Sizes that a countersignature or a trailer speaks of, so that the log is read only once. */
function sizesIn(value) {
  const said = Array.isArray(value?.checkpoints) ? value.checkpoints : [value?.statement];
  return said.map((each) => each?.size);
}

async function summary({ plant, logs, warnings }) {
  const told = logs.map(async ({ device, size, head, peaks, witnessed, code, seen }) => {
    const seenTo = Math.max(0, ...seen.values());
    return { device, size, head, root: await rootOf(peaks), witnessed, code, seenBy: seen.size, seenTo };
  });
  return { plant, logs: await Promise.all(told), warnings };
}

async function main([file, ...options]) {
  const { readFileSync } = await import('node:fs');
  const beside = options.includes('--witnesses') ? options[options.indexOf('--witnesses') + 1] : undefined;
  const witnesses = beside === undefined ? {} : { witnesses: readFileSync(beside) };
  const answer = await verifyRecord(readFileSync(file), witnesses);
  const { verdict, logs, warnings, ...place } = answer;
  const told = (word, values) => [word, ...Object.entries(values).map(([name, value]) => `${name}=${value}`)].join(' ');
  const lines = [
    told(verdict, place),
    ...logs.map((log) => told('log', log)),
    ...warnings.map((each) => told('warning', each)),
  ];
  console.log(options.includes('--json') ? JSON.stringify(answer, null, 2) : lines.join('\n'));
  return verdict === 'ok' ? 0 : 1;
}

/** Whether this file was started, not imported. */
async function isStarted() {
  if (!node || !process.argv[1]) return false;
  const [{ realpathSync }, { pathToFileURL }] = [await import('node:fs'), await import('node:url')];
  return import.meta.url === pathToFileURL(realpathSync(process.argv[1])).href;
}

if (await isStarted()) {
  try {
    process.exitCode = await main(process.argv.slice(2));
  } catch (cause) {
    console.error(`node verify-record.mjs FILE.jsonl|FILE.zip [--witnesses FILE] [--json]\n${cause.message}`);
    process.exitCode = 2;
  }
}
