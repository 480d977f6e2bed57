/** How long work is followed, and stopped. */
export interface Following {
  readonly signal?: AbortSignal | undefined;
  /** Told again and again which share of the work is done [1]. */
  readonly onShare?: ((share: number) => void) | undefined;
}

/** The following of a part of the work: from one share of the whole to another. */
export function partOf({ signal, onShare }: Following, from: number, to: number): Following {
  return { signal, onShare: onShare && ((share) => onShare(from + (to - from) * share)) };
}
