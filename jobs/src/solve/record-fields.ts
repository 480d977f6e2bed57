import * as z from 'zod';

/** Exact lines of a log. */
export function lines(what: string): z.ZodArray<z.ZodString> {
  return z.array(z.string()).meta({ description: `${what}: its exact lines, without line ends` });
}

export const publicKey = z.string().meta({ description: 'Public key of the device, Ed25519, 32 bytes in hex' });

/** Hash at the top of a tree. */
export function root(what: string): z.ZodString {
  return z.string().meta({ description: `${what}; SHA-256 in hex` });
}

export const proof = z
  .array(z.string())
  .meta({ description: 'Hashes beside the way to the root, lowest first (RFC 9162)' });

export const holds = z.boolean().meta({ description: 'True when the proof holds' });

/** A number of things, or a place counted from 0. */
export function count(description: string): z.ZodNumber {
  return z.number().meta({ unit: '1', description });
}
