import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useState,
  useSyncExternalStore,
} from 'react';
import { loadServerPlant, type PlantFault } from '../plant/load-plant.ts';
import type { PlantStore, StoreState } from './plant-store.ts';

interface Opened {
  readonly store: PlantStore;
  /** Whether the server has been asked for a plant; before, an empty store says nothing. */
  readonly asked: boolean;
  /** Why the server's plant could not be had. */
  readonly fault: PlantFault | undefined;
}

/** What the app knows of its store. */
export type StoreResult =
  | { readonly status: 'opening' }
  | ({ readonly status: 'open'; readonly readAgain: () => void } & Opened);

const StoreContext = createContext<StoreResult>({ status: 'opening' });

interface StoreProviderProps {
  /** Begun once, outside of what is drawn. */
  readonly opening: Promise<PlantStore>;
  /** The same where it is open already, so that its plant is what is drawn first. */
  readonly opened: PlantStore | undefined;
  readonly children: ReactNode;
}

/** Gives everything inside the store of this device, and lets the store meet the plant of the server. */
export function StoreProvider({ opening, opened: atOnce, children }: StoreProviderProps) {
  const [opened, setOpened] = useState(() => (atOnce === undefined ? undefined : unasked(atOnce)));
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    const order = new AbortController();
    void (async () => {
      const store = await opening;
      if (order.signal.aborted) return;
      setOpened((before) => (before !== undefined && turn === 0 ? before : unasked(store)));
      const fault = await meetServer(store, order.signal);
      if (!order.signal.aborted) setOpened({ store, asked: true, fault });
    })();
    return () => order.abort();
  }, [opening, turn]);
  const readAgain = useCallback(() => setTurn((before) => before + 1), []);
  const result: StoreResult = opened === undefined ? { status: 'opening' } : { status: 'open', readAgain, ...opened };
  return <StoreContext value={result}>{children}</StoreContext>;
}

function unasked(store: PlantStore): Opened {
  return { store, asked: false, fault: undefined };
}

/** The store as far as it is open. */
export function useStoreResult(): StoreResult {
  return useContext(StoreContext);
}

/** The open store and its state now; only inside of what is shown once it is open. */
export function useStore(): { readonly store: PlantStore; readonly state: StoreState } {
  const result = useStoreResult();
  if (result.status !== 'open') throw new Error('useStore stands outside of what is shown once the store is open');
  const { store } = result;
  const state = useSyncExternalStore(
    useCallback((onChange) => store.subscribe(onChange), [store]),
    () => store.current(),
  );
  return { store, state };
}

async function meetServer(store: PlantStore, signal: AbortSignal): Promise<PlantFault | undefined> {
  const found = await loadServerPlant(signal);
  if (found.status === 'failed') return found.fault;
  try {
    await store.meetServer(found.changes, found.origin);
    return undefined;
  } catch (problem) {
    return { kind: 'not-readable', reason: problem instanceof Error ? problem.message : String(problem) };
  }
}
