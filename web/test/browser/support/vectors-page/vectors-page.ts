import * as log from '@loopwright/records/log';
import { numbersOfFile } from '../../../../../records/test/vectors/es6-numbers.ts';

/**
 * The log's code as a browser runs it. A test hands in what is published and compares the answers outside of the page,
 * so that nothing in here knows what the right answer is.
 */
export interface VectorsPage {
  /** Canonical text of a double given by its bits; the refusal's code where it has none. */
  readonly numberText: (bits: string) => string;
  /** Canonical text of a JSON text. */
  readonly canonical: (json: string) => string;
  readonly sha256: (text: string) => string;
  /** Public key and signature by the browser itself and by the bundled code. */
  readonly signed: (vector: KeyAndMessage) => Promise<readonly Signed[]>;
  /** Whether the browser itself and the bundled code take a signature, each behind the strict look at its form. */
  readonly taken: (claim: SignatureClaim) => Promise<readonly boolean[]>;
  /** Roots over the first 0, 1, … all entries, given in hex; by the definition and grown entry by entry. */
  readonly roots: (entries: readonly string[]) => { readonly defined: string[]; readonly grown: string[] };
  readonly inclusion: (entries: readonly string[], index: number) => readonly string[];
  readonly consistency: (entries: readonly string[], first: number) => readonly string[];
  readonly inclusionHolds: (claim: Omit<log.InclusionClaim, 'leaf'> & { readonly entry: string }) => boolean;
  readonly consistencyHolds: typeof log.consistencyHolds;
  /** Hash over the first lines of the file of numbers, by the counts asked for. */
  readonly numbersHash: (counts: readonly number[]) => Promise<Record<number, string>>;
}

interface KeyAndMessage {
  readonly secret: string;
  readonly publicKey: string;
  readonly message: string;
}

interface Signed {
  readonly publicKey: string;
  readonly signature: string;
}

interface SignatureClaim {
  readonly message: string;
  readonly signature: string;
  readonly publicKey: string;
}

// RFC 8410, section 7: what stands before the 32 bytes of a private key.
const pkcs8Head = '302e020100300506032b657004220420';
const { subtle } = crypto;
const bytesOf = (hex: string) => Uint8Array.from(hex.match(/../g) ?? [], (byte) => Number.parseInt(byte, 16));
const hexOf = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

function doubleOf(bits: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
}

function numberText(bits: string): string {
  try {
    return log.canonicalText(doubleOf(bits));
  } catch (cause) {
    return String((cause as { code?: unknown }).code);
  }
}

async function signed({ secret, publicKey, message }: KeyAndMessage): Promise<readonly Signed[]> {
  const own = await log.webCryptoSigner(subtle, {
    privateKey: await subtle.importKey('pkcs8', bytesOf(pkcs8Head + secret), 'Ed25519', false, ['sign']),
    publicKey: await subtle.importKey('raw', bytesOf(publicKey), 'Ed25519', true, ['verify']),
  });
  const keys = [own, log.nobleSigner(bytesOf(secret))];
  return Promise.all(
    keys.map(async (key) => ({
      publicKey: hexOf(key.publicKey),
      signature: hexOf(await key.sign(bytesOf(message))),
    })),
  );
}

async function taken({ message, signature, publicKey }: SignatureClaim): Promise<readonly boolean[]> {
  const [text, sig, key] = [bytesOf(message), bytesOf(signature), bytesOf(publicKey)];
  const engines = [log.webCryptoVerifier(subtle), log.nobleVerifier()];
  return Promise.all(engines.map(async (verify) => log.signatureIsStrict(sig, key) && (await verify(text, sig, key))));
}

const leavesOf = (entries: readonly string[]) => entries.map((entry) => log.leafHash(bytesOf(entry)));

function roots(entries: readonly string[]) {
  const leaves = leavesOf(entries);
  const defined = [log.rootOfLeaves([]), ...leaves.map((_, at) => log.rootOfLeaves(leaves.slice(0, at + 1)))];
  const grown = [log.rootOf(log.emptyFrontier)];
  let tree = log.emptyFrontier;
  for (const leaf of leaves) {
    tree = log.grown(tree, leaf);
    grown.push(log.rootOf(tree));
  }
  return { defined, grown };
}

/** The hash is the browser's own, so that it rests on nothing that is under test. */
async function numbersHash(counts: readonly number[]): Promise<Record<number, string>> {
  const pieces: string[] = [];
  const sums: Record<number, string> = {};
  const last = Math.max(...counts);
  let [count, lines] = [0, ''];
  for (const [bits, number] of numbersOfFile()) {
    lines += `${bits},${log.canonicalText(number)}\n`;
    count += 1;
    if (count % 1000 > 0) continue;
    pieces.push(lines);
    lines = '';
    if (counts.includes(count)) sums[count] = await digestOf(pieces);
    if (count >= last) return sums;
  }
  return sums;
}

async function digestOf(pieces: readonly string[]): Promise<string> {
  return hexOf(new Uint8Array(await subtle.digest('SHA-256', await new Blob([...pieces]).arrayBuffer())));
}

const page: VectorsPage = {
  numberText,
  canonical: (json) => log.canonicalText(JSON.parse(json)),
  sha256: log.sha256Hex,
  signed,
  taken,
  roots,
  inclusion: (entries, index) => log.inclusionProof(leavesOf(entries), index),
  consistency: (entries, first) => log.consistencyProof(leavesOf(entries), first),
  inclusionHolds: ({ entry, ...claim }) => log.inclusionHolds({ ...claim, leaf: log.leafHash(bytesOf(entry)) }),
  consistencyHolds: log.consistencyHolds,
  numbersHash,
};
Object.assign(window, { page });
