import { canonicalText } from './canonical.ts';
import type { Checkpoint } from './checkpoint.ts';
import { sha256Hex } from './hash.ts';

// Crockford's digits: no I, L, O or U, so that nothing is misread.
const digits = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * The code of a checkpoint as a card carries it: 80 bits in 16 digits, so that paper bears witness to the log.
 *
 * @param checkpoint - with its signature
 * @returns for example `7Q0C-M4XN-2B9T-KE5W`
 */
export function cardCode(checkpoint: Checkpoint): string {
  const bits = BigInt(`0x${sha256Hex(canonicalText(checkpoint)).slice(0, 20)}`);
  const letters = Array.from({ length: 16 }, (_, i) => digits[Number((bits >> BigInt(75 - 5 * i)) & 31n)] ?? '');
  return letters.join('').replace(/(.{4})(?=.)/g, '$1-');
}

/**
 * A code as a person typed it, in the form of `cardCode`: small letters, O for 0, I or L for 1, missing hyphens.
 *
 * @returns undefined when it is no such code
 */
export function readCardCode(typed: string): string | undefined {
  const letters = typed.toUpperCase().replace(/[-\s]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
  return /^[0-9A-HJKMNP-TV-Z]{16}$/.test(letters) ? letters.replace(/(.{4})(?=.)/g, '$1-') : undefined;
}
