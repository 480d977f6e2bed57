import { ListParts } from '../../long/list-parts.tsx';
import { LongList } from '../../long/long-list.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { FoundThing } from './search-things.ts';
import { ThingRow } from './thing-row.tsx';

const rowsInPart = 20;
const rowHeight_px = 76;

interface FoundThingsProps {
  readonly found: readonly FoundThing[];
  readonly chosen: string | undefined;
  /** Whether a row says what kind of thing it is. */
  readonly withKind?: boolean;
}

/** Things one below the other, each a target. */
export function FoundThings({ found, chosen, withKind = false }: FoundThingsProps) {
  const { say } = useSpeech();
  return (
    <>
      <p aria-live="polite" className="soft found-count">
        {say('stores.found', { count: found.length })}
      </p>
      <LongList count={found.length} item_px={rowHeight_px}>
        <ListParts items={found} size={rowsInPart} first={rowsInPart} nameOf={({ id }) => id}>
          {(part) => (
            <ul className="found">
              {part.map(({ kind, thing, id }) => (
                <li key={`${kind} ${id}`}>
                  <ThingRow kind={kind} thing={thing} chosen={id === chosen} withKind={withKind} />
                </li>
              ))}
            </ul>
          )}
        </ListParts>
      </LongList>
    </>
  );
}
