import { useEffect, useState } from 'react';
import { afterFirstPaint } from './after-first-paint.ts';

// Once for the whole page: what is drawn later is drawn whole at once.
let stands = false;

/** False until what people came for stands on the screen; then true, and drawn again. */
export function useAfterFirstPaint(): boolean {
  const [seen, setSeen] = useState(stands);
  useEffect(() => {
    if (seen) return undefined;
    let current = true;
    afterFirstPaint(() => {
      stands = true;
      if (current) setSeen(true);
    });
    return () => {
      current = false;
    };
  }, [seen]);
  return seen;
}
