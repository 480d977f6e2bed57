// Crockford's digits: no letter that can be taken for a digit.
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const [bitsOfHex, bitsOfDigit] = [4, 5];

/** Hex digits, five bits to a letter; zeros fill up the last one. */
export function base32OfHex(hex: string): string {
  const bits = [...hex].map((digit) => Number.parseInt(digit, 16).toString(2).padStart(bitsOfHex, '0')).join('');
  const groups = bits.match(/.{1,5}/g) ?? [];
  return groups.map((group) => alphabet[Number.parseInt(group.padEnd(bitsOfDigit, '0'), 2)] ?? '').join('');
}

/**
 * The hex digits again; undefined where letters, length or filling are others than `base32OfHex` writes.
 *
 * @param text - as read
 * @param digits - how many hex digits it must hold
 */
export function hexOfBase32(text: string, digits: number): string | undefined {
  const values = [...text].map((letter) => alphabet.indexOf(letter));
  if (values.some((value) => value < 0)) return undefined;
  const bits = values.map((value) => value.toString(2).padStart(bitsOfDigit, '0')).join('');
  const groups = bits.slice(0, digits * bitsOfHex).match(/.{4}/g) ?? [];
  const hex = groups.map((group) => Number.parseInt(group, 2).toString(16)).join('');
  return base32OfHex(hex) === text && hex.length === digits ? hex : undefined;
}
