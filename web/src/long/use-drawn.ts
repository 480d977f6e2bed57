import { useContext, useEffect, useRef, useState } from 'react';
import { ListingContext } from './long-list.tsx';
import { watchNear } from './watch-near.ts';

interface DrawnOptions {
  readonly drawnFirst: boolean;
  readonly ahead_px: number;
  /** Items in the part. */
  readonly items: number;
}

/** Whether a part is drawn, and how high it was when it last was. A part that holds the focus stays. */
export function useDrawn(box: { readonly current: HTMLElement | null }, options: DrawnOptions) {
  const { drawnFirst, ahead_px, items } = options;
  const { learn } = useContext(ListingContext);
  const [drawn, setDrawn] = useState<'no' | 'near' | 'entered'>(drawnFirst ? 'near' : 'no');
  const [measured, setMeasured] = useState<{ readonly height_px: number; readonly items: number }>();
  const isDrawn = useRef(drawnFirst);
  useEffect(() => {
    isDrawn.current = drawn !== 'no';
  }, [drawn]);
  useEffect(() => {
    const { current: element } = box;
    if (element === null) return undefined;
    return watchNear(element, ahead_px, (near, height_px) => {
      if (isDrawn.current) learn(height_px, items);
      if (near) return setDrawn((before) => (before === 'no' ? 'near' : before));
      if (element.contains(document.activeElement)) return;
      if (isDrawn.current) setMeasured({ height_px, items });
      setDrawn('no');
    });
  }, [box, ahead_px, learn, items]);
  return {
    drawn: drawn !== 'no',
    entered: drawn === 'entered',
    height_px: measured?.items === items ? measured.height_px : undefined,
    enter: () => setDrawn('entered'),
  };
}
