import {
  type DeviceKey,
  nobleSigner,
  nobleVerifier,
  type Verify,
  webCryptoSigner,
  webCryptoVerifier,
} from '@loopwright/records/log';
import type { Database, KeyRow } from './database.ts';
import { strictWrite } from './strict-write.ts';

/** The key of this device and the check of signatures, both by the browser itself where it can. */
export interface DeviceCrypto {
  readonly key: DeviceKey;
  readonly verify: Verify;
}

/** The key of this device; made at the first start and never given out. */
export async function deviceCrypto(db: Database): Promise<DeviceCrypto> {
  const row = (await db.get('keys', 'own')) ?? (await keepKey(db, await newKey()));
  const native = 'privateKey' in row;
  return {
    key: native ? await webCryptoSigner(crypto.subtle, row) : nobleSigner(row.secret),
    verify: native ? webCryptoVerifier(crypto.subtle) : nobleVerifier(),
  };
}

async function newKey(): Promise<KeyRow> {
  try {
    const pair = await crypto.subtle.generateKey('Ed25519', false, ['sign', 'verify']);
    if ('privateKey' in pair) return { privateKey: pair.privateKey, publicKey: pair.publicKey };
  } catch {
    // An older browser, or a page that did not come over a secure connection.
  }
  return { secret: crypto.getRandomValues(new Uint8Array(32)) };
}

/** Two tabs may start at once: the first key stays. */
async function keepKey(db: Database, fresh: KeyRow): Promise<KeyRow> {
  let kept = fresh;
  await strictWrite(db, ['keys'], async (tx) => {
    const keys = tx.objectStore('keys');
    const before = await keys.get('own');
    if (before === undefined) await keys.add(fresh, 'own');
    else kept = before;
  });
  return kept;
}
