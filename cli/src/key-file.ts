import { createPrivateKey, createPublicKey, generateKeyPairSync, type KeyObject, sign } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import type { DeviceKey } from '@loopwright/records/log';
import type { Voice } from '@loopwright/words';
import { fileTrouble } from './file-trouble.ts';
import { Stop } from './stop.ts';

/** A key that lies in a file, and whether it was made just now. */
export interface FileKey {
  readonly key: DeviceKey;
  readonly isNew: boolean;
}

/** The Ed25519 key of a PEM file; a file that is not there yet is made, readable by its owner alone. */
export async function keyOfFile(file: string, speech: Voice): Promise<FileKey> {
  const pem = await existing(file, speech);
  if (pem !== undefined) return { key: deviceKey(readPem(pem, file, speech)), isNew: false };
  const { privateKey } = generateKeyPairSync('ed25519');
  try {
    await writeFile(file, privateKey.export({ format: 'pem', type: 'pkcs8' }), { mode: 0o600, flag: 'wx' });
  } catch (cause) {
    throw fileTrouble(cause, { speech, value: file, missing: 'terminal.no-target-folder', exitCode: 1 });
  }
  return { key: deviceKey(privateKey), isNew: true };
}

async function existing(file: string, speech: Voice): Promise<string | undefined> {
  try {
    return await readFile(file, 'utf8');
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw fileTrouble(cause, { speech, value: file, missing: 'terminal.no-file', exitCode: 2 });
  }
}

function readPem(pem: string, file: string, speech: Voice): KeyObject {
  try {
    const key = createPrivateKey(pem);
    if (key.asymmetricKeyType === 'ed25519') return key;
  } catch {
    // Said below, with the file.
  }
  throw new Stop(speech.say('witness.no-key', { file }), 1);
}

function deviceKey(privateKey: KeyObject): DeviceKey {
  const { x = '' } = createPublicKey(privateKey).export({ format: 'jwk' });
  return {
    publicKey: Uint8Array.from(Buffer.from(x, 'base64url')),
    sign: async (message) => sign(null, message, privateKey),
    copyable: true,
  };
}
