/** A position as the search sees it: its words in every language, because people mix them. */
export interface Searchable {
  readonly id: string;
  readonly words: readonly string[];
}

/** Without case, accents and the marks people leave out: `QM-04-3` reads `qm 04 3`. */
export function plainText(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{Mn}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/**
 * Positions that answer to everything typed, in the order given, the exact id first.
 *
 * Each typed word must begin a word of the position (`4` begins `04`), or all of it stand in the id with the
 * marks left out (`qm043`).
 */
export function searchPositions<P extends Searchable>(positions: readonly P[], typed: string): readonly P[] {
  const wanted = plainText(typed).split(' ').filter(Boolean);
  if (wanted.length === 0) return [];
  const joined = wanted.join('');
  const found = positions.filter((position) => answers(position, wanted));
  const exact = (position: P) => (joinedId(position) === joined ? 0 : 1);
  return found.toSorted((a, b) => exact(a) - exact(b));
}

const shortestJoined = 3;

function answers(position: Searchable, wanted: readonly string[]): boolean {
  const joined = wanted.join('');
  if (joined.length >= shortestJoined && joinedId(position).includes(joined)) return true;
  const words = [position.id, ...position.words].flatMap((text) => plainText(text).split(' '));
  return wanted.every((word) => words.some((own) => begins(own, word)));
}

function begins(own: string, word: string): boolean {
  return own.startsWith(word) || own.replace(/^0+(?=\d)/, '').startsWith(word);
}

function joinedId(position: Searchable): string {
  return plainText(position.id).replaceAll(' ', '');
}
