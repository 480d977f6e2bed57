import { Suspense } from 'react';
import { fetchedLater } from '../../offline/fetched-later.tsx';

const Fetched = fetchedLater(async () => (await import('./badge-wearer.tsx')).BadgeWearer);

/** Who wears a badge. Fetched with the badge. */
export function BadgeWearer(props: { readonly badge: string }) {
  return (
    <Suspense fallback={null}>
      <Fetched {...props} />
    </Suspense>
  );
}
