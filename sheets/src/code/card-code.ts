import { family, sealed } from './checksum.ts';
import { readCode } from './read-code.ts';

/** What the code of a printed card says: which position, and which revision of its card. */
export interface CardCode {
  readonly position: string;
  readonly revision: string;
}

/**
 * The payload of a card's code: `LW1 position revision checksum`. Data, never an address.
 * @param code - position and card revision; neither may hold a space
 */
export function cardCode(code: CardCode): string {
  return sealed([family, code.position, code.revision]);
}

/**
 * Reads a scanned code of a card.
 * @returns position and revision, or undefined for anything that is not such a code or was read wrongly
 */
export function readCardCode(text: string): CardCode | undefined {
  const code = readCode(text);
  return code.is === 'card' ? { position: code.position, revision: code.revision } : undefined;
}
