type Told = (near: boolean, height_px: number) => void;

interface Watched {
  readonly told: Told;
  readonly ahead_px: number;
  readonly observer: IntersectionObserver;
}

const watched = new Map<Element, Watched>();
const observers = new Map<Element | null, Map<number, IntersectionObserver>>();

/**
 * Tells whenever an element comes near to what is seen of the part of the page that scrolls it, or goes away from it. An
 * element that is not shown at all tells nothing.
 *
 * @param ahead_px - how near is near [px]
 * @returns ends the watch
 */
export function watchNear(element: Element, ahead_px: number, told: Told): () => void {
  if (watched.size === 0) addEventListener('resize', lookAgain);
  begin(element, ahead_px, told);
  return () => {
    watched.get(element)?.observer.unobserve(element);
    watched.delete(element);
    if (watched.size > 0) return;
    removeEventListener('resize', lookAgain);
    for (const observer of allObservers()) observer.disconnect();
    observers.clear();
  };
}

function begin(element: Element, ahead_px: number, told: Told): void {
  const observer = observerOf(scrollerOf(element), ahead_px);
  watched.set(element, { told, ahead_px, observer });
  observer.observe(element);
}

function observerOf(root: Element | null, ahead_px: number): IntersectionObserver {
  const ofRoot = observers.get(root) ?? new Map<number, IntersectionObserver>();
  observers.set(root, ofRoot);
  const observer = ofRoot.get(ahead_px) ?? new IntersectionObserver(tell, { root, rootMargin: `${ahead_px}px 0px` });
  ofRoot.set(ahead_px, observer);
  return observer;
}

function allObservers(): readonly IntersectionObserver[] {
  return [...observers.values()].flatMap((ofRoot) => [...ofRoot.values()]);
}

function tell(entries: readonly IntersectionObserverEntry[]): void {
  for (const { target, isIntersecting, boundingClientRect } of entries) {
    const { width, height } = boundingClientRect;
    if (width > 0) watched.get(target)?.told(isIntersecting, height);
  }
}

/** A margin counts only for the part that scrolls itself; null stands for the page. */
function scrollerOf(element: Element): Element | null {
  const parent = element.parentElement;
  if (parent === null || parent === document.body) return null;
  return /auto|scroll/.test(getComputedStyle(parent).overflowY) ? parent : scrollerOf(parent);
}

// On a wide screen the list scrolls by itself, on a narrow one the page does: a turned tablet changes from one to the other.
function lookAgain(): void {
  for (const [element, { told, ahead_px, observer }] of [...watched]) {
    if (observerOf(scrollerOf(element), ahead_px) === observer) continue;
    observer.unobserve(element);
    begin(element, ahead_px, told);
  }
}
