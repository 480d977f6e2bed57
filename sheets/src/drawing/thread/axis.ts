/** One axis of a drawing on which long empty stretches are shortened. */
export interface Axis {
  /** From metres to drawing units. Stretches with something in them keep the drawing's scale. */
  map(position_m: number): number;
  /** Middles of the shortened stretches, in drawing units. */
  readonly breaks: readonly number[];
  readonly length: number;
}

/** A stretch of the axis that something occupies [m]. */
export type Stretch = readonly [from_m: number, to_m: number];

/** An empty stretch is shortened only where that saves at least this share. */
const worthwhile = 1.15;

/** Overlapping stretches made one, in order. */
export function merged(stretches: readonly Stretch[]): Stretch[] {
  const result: [number, number][] = [];
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0])) {
    const last = result.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else result.push([from, to]);
  }
  return result;
}

/**
 * Lays an axis out: occupied stretches at full scale, empty ones no longer than `gap` units.
 * @param stretches - occupied stretches, merged and in order [m], at least one
 * @param scale - drawing units per metre
 * @param gap - longest empty stretch [drawing units]
 */
export function shortenedAxis(stretches: readonly Stretch[], scale: number, gap: number): Axis {
  const first = stretches[0]?.[0] ?? 0;
  const knots: { readonly from_m: number; readonly to_m: number; readonly start: number; readonly scale: number }[] =
    [];
  const breaks: number[] = [];
  let cursor = 0;
  const lay = (from_m: number, to_m: number, local: number): void => {
    knots.push({ from_m, to_m, start: cursor, scale: local });
    cursor += (to_m - from_m) * local;
  };
  stretches.forEach(([from, to], i) => {
    const empty = from - (stretches[i - 1]?.[1] ?? from);
    if (empty > 0) {
      const shortened = empty * scale > gap * worthwhile;
      if (shortened) breaks.push(cursor + gap / 2);
      lay(from - empty, from, shortened ? gap / empty : scale);
    }
    lay(from, to, scale);
  });
  const map = (position_m: number): number => {
    const knot = knots.find(({ to_m }) => position_m <= to_m) ?? knots.at(-1);
    return knot ? knot.start + (position_m - knot.from_m) * knot.scale : (position_m - first) * scale;
  };
  return { map, breaks, length: cursor };
}
