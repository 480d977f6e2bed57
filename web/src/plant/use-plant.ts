import { useCallback, useEffect, useRef, useState } from 'react';
import { loadPlant, type PlantResult } from './load-plant.ts';

/** The plant as read from the server, and the way to read it once more. */
export function usePlant(): { readonly result: PlantResult; readonly readAgain: () => void } {
  const [result, setResult] = useState<PlantResult>({ status: 'reading' });
  const reading = useRef<AbortController>(undefined);
  const readAgain = useCallback(() => {
    reading.current?.abort();
    const order = new AbortController();
    reading.current = order;
    setResult({ status: 'reading' });
    void loadPlant(order.signal).then((found) => {
      if (!order.signal.aborted) setResult(found);
    });
  }, []);
  useEffect(() => {
    readAgain();
    return () => reading.current?.abort();
  }, [readAgain]);
  return { result, readAgain };
}
