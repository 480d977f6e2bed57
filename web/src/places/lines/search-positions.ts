/** A position as the search sees it: its words in every language, because people mix them. */
export interface Searchable {
  readonly id: string;
  readonly words: readonly string[];
}

const foreign = /[^\0-\x7f]/;

/** Without case, accents and the marks people leave out: `QM-04-3` reads `qm 04 3`. */
export function plainText(text: string): string {
  // Most names need no look at what accents they have, and there are thousands of them.
  if (!foreign.test(text))
    return text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, ' ')
      .trim();
  return text
    .normalize('NFD')
    .replace(/\p{Mn}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** What the search looks through for one position, made plain once: every word stands between two spaces. */
interface Sought {
  /** The id without its marks. */
  readonly joined: string;
  /** The parts of the id, also without leading zeros. */
  readonly parts: string;
  readonly words: string;
}

const prepared = new WeakMap<readonly Searchable[], readonly Sought[]>();

/** Makes positions ready to be searched, so that the first letter typed is answered as fast as the others. */
export function prepareSearch(positions: readonly Searchable[]): readonly Sought[] {
  const before = prepared.get(positions);
  if (before !== undefined) return before;
  const plain = remembering(plainText);
  const sought = positions.map(({ id, words }) => soughtIn(plainText(id), words.map(plain)));
  prepared.set(positions, sought);
  return sought;
}

function soughtIn(id: string, words: readonly string[]): Sought {
  const parts = id.split(' ').flatMap((part) => [part, part.replace(/^0+(?=\d)/, '')]);
  return { joined: id.replaceAll(' ', ''), parts: ` ${parts.join(' ')} `, words: ` ${words.join(' ')} ` };
}

// Ten thousand positions share a few hundred names of lines, belts and states.
function remembering(compute: (text: string) => string): (text: string) => string {
  const known = new Map<string, string>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const result = compute(text);
    known.set(text, result);
    return result;
  };
}

/**
 * Positions that answer to everything typed: the exact id first, then ids with all of it in one piece, then the others,
 * each in the order given.
 *
 * Each typed word must begin a word of the position; a typed number must begin a part of its id (`4` begins `04`) or
 * be a whole word elsewhere, so that `04-3` does not find a belt 30. All of it may also stand in the id with the marks
 * left out (`qm043`).
 */
export function searchPositions<P extends Searchable>(positions: readonly P[], typed: string): readonly P[] {
  const words = plainText(typed).split(' ').filter(Boolean);
  if (words.length === 0) return [];
  const joined = words.join('');
  const wanted = words.map((word) => ({
    begins: ` ${word}`,
    elsewhere: /^\d+$/.test(word) ? ` ${word} ` : ` ${word}`,
  }));
  const sought = prepareSearch(positions);
  const ranks: readonly [exact: P[], inOnePiece: P[], others: P[]] = [[], [], []];
  positions.forEach((position, i) => {
    const own = sought[i];
    if (own === undefined) return;
    if (own.joined === joined) ranks[0].push(position);
    else if (joined.length >= shortestJoined && own.joined.includes(joined)) ranks[1].push(position);
    else if (wanted.every((word) => own.parts.includes(word.begins) || own.words.includes(word.elsewhere)))
      ranks[2].push(position);
  });
  return ranks.flat();
}

const shortestJoined = 3;
