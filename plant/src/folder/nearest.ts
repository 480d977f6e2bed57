/**
 * The known name closest to what was written, when it is close enough to be a slip of the hand.
 *
 * @param written - as found in the file
 * @param known - the names that exist
 * @returns the nearest name, or nothing when all are too far
 */
export function nearest(written: string, known: Iterable<string>): string | undefined {
  const wanted = written.toLowerCase().slice(0, 60);
  const furthest = Math.max(1, Math.floor(wanted.length / 3));
  let best: string | undefined;
  let bestDistance = furthest + 1;
  for (const name of known) {
    if (Math.abs(name.length - wanted.length) >= bestDistance) continue;
    const distance = editDistance(wanted, name.toLowerCase());
    if (distance < bestDistance) [best, bestDistance] = [name, distance];
  }
  return best;
}

/** Levenshtein distance: insertions, deletions and replacements, one each. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replace = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replace, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
