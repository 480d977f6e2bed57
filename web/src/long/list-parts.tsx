import { type FocusEvent, type ReactNode, useContext, useRef } from 'react';
import { flushSync } from 'react-dom';
import { ListingContext } from './long-list.tsx';
import { useDrawn } from './use-drawn.ts';

/** Parts in one part of parts: a list of thousands is not even cut up where nobody is near. */
const partsTogether = 20;
/** How far from what is seen a part is drawn already, and a part of parts cut up [px]. */
const ahead_px = { part: 500, partOfParts: 2000 };

interface PartsProps<T> {
  readonly items: readonly T[];
  /** Items in one part. */
  readonly size: number;
  /** How many items are drawn at once, before anybody has looked where they stand. */
  readonly first: number;
  /** Whether the last part is drawn at once too. */
  readonly last?: boolean;
  readonly nameOf: (item: T) => string;
  readonly children: (items: readonly T[]) => ReactNode;
}

/** The parts of a long list, each drawn by `children` when it is near. */
export function ListParts<T>({ items, size, first, last = false, nameOf, children }: PartsProps<T>) {
  const { whole } = useContext(ListingContext);
  if (whole) return <div>{children(items)}</div>;
  const nested = items.length > size * partsTogether;
  const step = nested ? size * partsTogether : size;
  const starts = Array.from({ length: Math.ceil(items.length / step) }, (_, i) => i * step);
  return starts.map((start) => (
    <ListPart
      key={start}
      items={items.slice(start, start + step)}
      ahead_px={nested ? ahead_px.partOfParts : ahead_px.part}
      drawnFirst={start < first || (last && start + step >= items.length)}
      nameOf={nameOf}
    >
      {(part, entered) =>
        nested ? (
          <ListParts items={part} size={size} first={entered ? size : first - start} last={entered} nameOf={nameOf}>
            {children}
          </ListParts>
        ) : (
          children(part)
        )
      }
    </ListPart>
  ));
}

interface PartProps<T> {
  readonly items: readonly T[];
  readonly ahead_px: number;
  readonly drawnFirst: boolean;
  readonly nameOf: (item: T) => string;
  readonly children: (items: readonly T[], entered: boolean) => ReactNode;
}

/** A part as drawn, or the button that stands for it: whoever comes to it by keyboard goes on inside. */
function ListPart<T>({ items, ahead_px, drawnFirst, nameOf, children }: PartProps<T>) {
  const box = useRef<HTMLDivElement>(null);
  const { drawn, entered, height_px, enter } = useDrawn(box, { drawnFirst, ahead_px, items: items.length });
  const goIn = (event: FocusEvent) => {
    const back = isBefore(box.current, event.relatedTarget);
    flushSync(enter);
    [...(box.current?.querySelectorAll('a') ?? [])].at(back ? -1 : 0)?.focus();
  };
  const blockSize = height_px === undefined ? `calc(var(--item-height) * ${items.length})` : `${height_px}px`;
  return (
    <div ref={box} className="list-part">
      {drawn ? (
        children(items, entered)
      ) : (
        <button type="button" className="undrawn" style={{ blockSize }} onFocus={goIn} onClick={enter}>
          {rangeOf(items, nameOf)}
        </button>
      )}
    </div>
  );
}

// Each name keeps its own direction (Unicode Standard Annex 9: isolates); elements for it would double the page.
const isolate = (name: string) => `\u2068${name}\u2069`;

function rangeOf<T>(items: readonly T[], nameOf: (item: T) => string): string {
  const [from, to] = [items[0], items.at(-1)];
  return from === undefined || to === undefined ? '' : `${isolate(nameOf(from))} – ${isolate(nameOf(to))}`;
}

/** Whether the part stands before an element in the page: whoever comes from there comes to its end. */
function isBefore(part: Element | null, other: Element | null): boolean {
  if (part === null || other === null) return false;
  return (part.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
}
