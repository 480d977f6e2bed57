import { useSyncExternalStore } from 'react';

// The width from which list and thing stand side by side.
const query = '(min-width: 1100px)';

function subscribe(onChange: () => void): () => void {
  const media = window.matchMedia(query);
  media.addEventListener('change', onChange);
  return () => media.removeEventListener('change', onChange);
}

/** Whether the window is wide: then questions stand as a list, else one at a time. */
export function useWide(): boolean {
  return useSyncExternalStore(subscribe, () => window.matchMedia(query).matches);
}
