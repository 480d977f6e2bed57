/** Random choices that are the same in every run (mulberry32, a public-domain generator by T. Ettinger). */
export interface Choice {
  /** A whole number from 0, below `count`. */
  readonly below: (count: number) => number;
  readonly of: <T>(list: readonly T[]) => T;
  readonly bytes: (count: number) => Uint8Array<ArrayBuffer>;
}

export function seeded(seed: number): Choice {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (count: number) => Math.floor(next() * count);
  return {
    below,
    of: (list) => {
      const found = list[below(list.length)];
      if (found === undefined && list.length === 0) throw new Error('nothing to choose from');
      return found as (typeof list)[number];
    },
    bytes: (count) => Uint8Array.from({ length: count }, () => below(256)),
  };
}
