import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';

const order = hexToBytes('edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010');
const prime = hexToBytes('edffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f');

// y coordinates of the points of order 1, 2, 4 and 8; the sign of x does not matter.
const lowOrder: ReadonlySet<string> = new Set([
  '0100000000000000000000000000000000000000000000000000000000000000',
  'ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f',
  '0000000000000000000000000000000000000000000000000000000000000000',
  '26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05',
  'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a',
]);

/**
 * Whether an Ed25519 signature keeps to the part that every engine judges alike.
 *
 * Engines differ on scalars beyond the group's order, on points written in a second way and on points of low order.
 * No honest key makes such a signature, so all of them are refused before an engine is asked.
 *
 * @param signature - R and S, 64 bytes
 * @param publicKey - A, 32 bytes
 * @source RFC 8032, 5.1.7 (S below the order); Chalkias, Garillot, Nikolaenko: Taming the many EdDSAs, 2020
 */
export function signatureIsStrict(signature: Uint8Array, publicKey: Uint8Array): boolean {
  return (
    signature.length === 64 &&
    isBelow(signature.subarray(32), order) &&
    isOrdinaryPoint(signature.subarray(0, 32)) &&
    isOrdinaryPoint(publicKey)
  );
}

/** Whether 32 bytes write a point in the one right way, and none of low order. That it is on the curve is not said. */
export function isOrdinaryPoint(point: Uint8Array): boolean {
  if (point.length !== 32) return false;
  const y = Uint8Array.from(point);
  y[31] = (y[31] ?? 0) & 0x7f;
  return isBelow(y, prime) && !lowOrder.has(bytesToHex(y));
}

/** Compares two numbers of 32 bytes, lowest byte first. */
function isBelow(a: Uint8Array, b: Uint8Array): boolean {
  for (let i = 31; i >= 0; i--) {
    const [left, right] = [a[i] ?? 0, b[i] ?? 0];
    if (left !== right) return left < right;
  }
  return false;
}
