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
 * Each typed word must begin a word of the position; a typed number must begin a part of its id (`4` begins `04`) or
 * be a whole word elsewhere, so that `04-3` does not find a belt 30. All of it may also stand in the id with the marks
 * left out (`qm043`).
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
  const idParts = plainText(position.id).split(' ');
  const words = position.words.flatMap((text) => plainText(text).split(' '));
  return wanted.every((word) => idParts.some((part) => begins(part, word)) || words.some((own) => says(own, word)));
}

function begins(part: string, word: string): boolean {
  return part.startsWith(word) || part.replace(/^0+(?=\d)/, '').startsWith(word);
}

function says(own: string, word: string): boolean {
  return /^\d+$/.test(word) ? own === word : own.startsWith(word);
}

function joinedId(position: Searchable): string {
  return plainText(position.id).replaceAll(' ', '');
}
