import { zipSync } from 'fflate';
import { blobReference, type Countersignature, canonicalText, sha256Hex } from '../../src/log/index.ts';
import { deviceKey } from '../log/sample-log.ts';
import { type Forged, type ForgedLog, forgedExport, forgedWitness } from './forge.ts';

export const curve = new TextEncoder().encode('time_s,temperature_degC\n0,20\n60,190\n');
export const photo = Uint8Array.from({ length: 700 }, (_, i) => i * 7);
export const blobs: ReadonlyMap<string, Uint8Array> = new Map([curve, photo].map((each) => [sha256Hex(each), each]));
const references = [blobReference(curve, 'curve'), blobReference(photo, 'photo')];

export const phone: ForgedLog = {
  key: deviceKey('phone'),
  size: 9,
  change: (n) => (n === 3 ? { blobs: references } : {}),
};
export const tablet: ForgedLog = { key: deviceKey('tablet'), size: 6, seen: 4 };
export const idle: ForgedLog = { key: deviceKey('idle'), size: 0 };

/** What lies in an archive, before it is packed. */
export interface Parts {
  readonly lines: readonly (string | Uint8Array)[];
  readonly blobs: ReadonlyMap<string, Uint8Array>;
  readonly witnesses: readonly string[];
}

export const record: Forged = await forgedExport([phone, idle, tablet]);
const [ofPhone = [], , ofTablet = []] = record.ids;
const seenPhone = { key: phone.key, ids: ofPhone };
const seenTablet = { key: tablet.key, ids: ofTablet };
const seenStranger = { key: deviceKey('stranger'), ids: ofPhone };

export const statements: readonly Countersignature[] = [
  await forgedWitness(seenPhone, 5),
  await forgedWitness(seenPhone, 9, { by: deviceKey('server') }),
  await forgedWitness(seenPhone, 7, { by: tablet.key }),
  await forgedWitness(seenTablet, 4),
  await forgedWitness(seenStranger, 3),
];

export const whole: Parts = { lines: record.lines, blobs, witnesses: statements.map((each) => canonicalText(each)) };

export function fileOf(lines: readonly (string | Uint8Array)[]): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(Buffer.concat(lines.flatMap((line) => [Buffer.from(line), Buffer.from('\n')])));
}

/** An archive of parts; `packing` 0 stores, 6 packs. */
export function packed({ lines, blobs: given, witnesses }: Parts, packing: 0 | 6 = 6): Uint8Array {
  const files = Object.fromEntries([...given].map(([name, bytes]) => [`blobs/${name}`, bytes]));
  const beside = witnesses.length === 0 ? {} : { 'witnesses.jsonl': fileOf(witnesses) };
  return zipSync({ 'log.jsonl': fileOf(lines), ...beside, ...files }, { level: packing });
}
