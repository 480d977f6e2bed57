/** A row with a reading: its line, its time in the file's unit, and its temperatures. */
export interface LoggedRow {
  readonly row: number;
  readonly time: number;
  readonly values: readonly (number | null)[];
}

/** Rows that come one after the other, kept as a number of them that stays bounded. */
export interface Keeper {
  readonly push: (row: LoggedRow) => void;
  /** What is kept, in order; of every stretch its first, last, least and most of each column. */
  readonly rows: () => readonly LoggedRow[];
}

const openRows = 64;

/**
 * Keeps about so many rows of any number: where they become too many, two stretches become one. No least or most of a
 * stretch is lost, so none of the file is.
 *
 * @param keep - rows, about
 */
export function keepExtremes(keep: number): Keeper {
  const most = Math.max(4, Math.round(keep / 4));
  let stretches: (readonly LoggedRow[])[] = [];
  let size = 1;
  let open: readonly LoggedRow[] = [];
  let taken = 0;
  const close = (): void => {
    stretches.push(extremes(open));
    open = [];
    taken = 0;
    if (stretches.length < 2 * most) return;
    stretches = pairs(stretches);
    size *= 2;
  };
  const waiting: LoggedRow[] = [];
  const gather = (): void => {
    open = extremes([...open, ...waiting]);
    waiting.length = 0;
  };
  return {
    push: (row) => {
      waiting.push(row);
      taken += 1;
      if (waiting.length >= openRows || taken >= size) gather();
      if (taken >= size) close();
    },
    rows: () => [...stretches.flat(), ...extremes([...open, ...waiting])],
  };
}

function pairs(stretches: readonly (readonly LoggedRow[])[]): (readonly LoggedRow[])[] {
  const merged: (readonly LoggedRow[])[] = [];
  for (let i = 0; i < stretches.length; i += 2)
    merged.push(extremes([...(stretches[i] ?? []), ...(stretches[i + 1] ?? [])]));
  return merged;
}

function extremes(rows: readonly LoggedRow[]): readonly LoggedRow[] {
  if (rows.length <= 2) return rows;
  const kept = new Set<number>([0, rows.length - 1]);
  const columns = rows[0]?.values.length ?? 0;
  for (let column = 0; column < columns; column += 1) {
    let [least, most] = [-1, -1];
    for (let i = 0; i < rows.length; i += 1) {
      const value = rows[i]?.values[column] ?? null;
      if (value === null) continue;
      if (least < 0 || value < (rows[least]?.values[column] ?? 0)) least = i;
      if (most < 0 || value > (rows[most]?.values[column] ?? 0)) most = i;
    }
    if (least >= 0) kept.add(least).add(most);
  }
  return rows.filter((_, i) => kept.has(i));
}
