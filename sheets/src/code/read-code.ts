import { checksum, family, separator } from './checksum.ts';
import { labelKind, markLength } from './position-code.ts';

/** Why a text is no code of ours. */
export const codeFaults = ['empty', 'address', 'foreign', 'later-form', 'malformed', 'checksum'] as const;
export type CodeFault = (typeof codeFaults)[number];

/** What a scanned text says. */
export type ReadCode =
  | { readonly is: 'position'; readonly position: string; readonly plant: string }
  | { readonly is: 'card'; readonly position: string; readonly revision: string }
  | { readonly is: 'refused'; readonly why: CodeFault };

/** Short names of things, as the plant's schemas allow them: neither space nor colon nor slash. */
const shortName = /^[\p{L}\p{N}][\p{L}\p{N}._-]{0,39}$/u;
const letters = (count: number): RegExp => new RegExp(`^[0-9A-HJKMNP-TV-Z]{${count}}$`);
/** Third field by kind: the mark of a label's plant, the revision of a card. */
const thirdField = { label: letters(markLength), card: letters(8) } as const;
/** A scheme, a host with its www, or a name with a dot and a path. */
const address = /^([a-z][a-z0-9+.-]*:\S|www\.|[^\s/]+\.[a-z]{2,}(\/|$|\?))/i;
const ofTheFamily = /^LW\d+[A-Z]?$/;

const refused = (why: CodeFault): ReadCode => ({ is: 'refused', why });

/**
 * Reads a scanned text as a code of the family `LW1`: a position's label or a printed card.
 * @param text - as scanned or typed
 * @returns what it says; anything else is refused with the reason, and nothing in it is used
 */
export function readCode(text: string): ReadCode {
  const found = text.trim();
  if (found === '') return refused('empty');
  const [head = '', position = '', third = '', check = '', ...rest] = found.split(separator);
  if (!ofTheFamily.test(head)) return refused(address.test(found) ? 'address' : 'foreign');
  if (head !== family && head !== `${family}${labelKind}`) return refused('later-form');
  if (check === '' || rest.length > 0) return refused('malformed');
  if (check !== checksum([head, position, third].join(separator))) return refused('checksum');
  const isLabel = head !== family;
  if (!shortName.test(position) || !(isLabel ? thirdField.label : thirdField.card).test(third)) {
    return refused('malformed');
  }
  return isLabel ? { is: 'position', position, plant: third } : { is: 'card', position, revision: third };
}
