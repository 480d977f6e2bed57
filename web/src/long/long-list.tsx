import { createContext, type ReactNode, useLayoutEffect, useMemo, useRef } from 'react';

/** Lists up to this length stand in the page whole: only longer ones are drawn in parts. */
const wholeUpTo = 150;

interface LongListProps {
  /** How many items all parts have together. */
  readonly count: number;
  /** About how high an item is, until one was drawn and measured [px]. */
  readonly item_px: number;
  readonly children: ReactNode;
}

export interface Listing {
  readonly whole: boolean;
  /** Learns from a drawn part how high those not drawn yet will be. */
  readonly learn: (height_px: number, items: number) => void;
}

export const ListingContext = createContext<Listing>({ whole: true, learn: () => undefined });

/**
 * A list of which only what is near to what is seen is drawn. Every other part keeps its height, so that nothing jumps,
 * and says from what to what it goes; the keyboard leads into it as if it were there.
 */
export function LongList({ count, item_px, children }: LongListProps) {
  const box = useRef<HTMLDivElement>(null);
  const whole = count <= wholeUpTo;
  useLayoutEffect(() => setItemHeight(box.current, item_px), [item_px]);
  const listing = useMemo(() => ({ whole, learn: learner(box) }), [whole]);
  return (
    <div className="long" ref={box}>
      <ListingContext value={listing}>{children}</ListingContext>
    </div>
  );
}

function learner(box: { readonly current: HTMLElement | null }): Listing['learn'] {
  let known = false;
  return (height_px, items) => {
    if (known || items === 0) return;
    known = true;
    setItemHeight(box.current, height_px / items);
  };
}

function setItemHeight(box: HTMLElement | null, item_px: number): void {
  box?.style.setProperty('--item-height', `${item_px}px`);
}
