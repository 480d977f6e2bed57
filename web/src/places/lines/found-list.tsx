import { Link } from 'wouter';
import { ListParts } from '../../long/list-parts.tsx';
import { LongList } from '../../long/long-list.tsx';
import { Mark } from '../../page/mark.tsx';
import { stateShapes } from '../../page/state-word.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { cardAddress } from '../card/card-address.ts';
import type { FoundPosition } from './line-words.ts';
import { moveByArrows } from './move-focus.ts';

interface FoundListProps {
  readonly found: readonly FoundPosition[];
  readonly chosen: string | undefined;
}

const rowsInPart = 20;
const rowHeight_px = 76;

/** The positions that answer to a search, one target each; or what to type when none does. */
export function FoundList({ found, chosen }: FoundListProps) {
  const { say } = useSpeech();
  return (
    <>
      <p aria-live="polite" className="soft">
        {say('app.found', { count: found.length })}
      </p>
      {found.length === 0 ? <p>{say('app.found.none')}</p> : null}
      <LongList count={found.length} item_px={rowHeight_px}>
        <ListParts items={found} size={rowsInPart} first={rowsInPart} nameOf={({ id }) => id}>
          {(part) => (
            <ul className="found">
              {part.map((position) => (
                <li key={position.id}>
                  <FoundRow found={position} chosen={position.id === chosen} />
                </li>
              ))}
            </ul>
          )}
        </ListParts>
      </LongList>
    </>
  );
}

function FoundRow({ found, chosen }: { readonly found: FoundPosition; readonly chosen: boolean }) {
  const { say } = useSpeech();
  const { id, line, die, summary } = found;
  const shape = stateShapes[summary.state];
  return (
    <Link
      href={cardAddress(id)}
      className={`found-row state-${shape}`}
      aria-current={chosen ? 'page' : undefined}
      onKeyDown={moveByArrows}
    >
      <Mark name={shape} />
      <span className="found-words">
        <span className="found-id">{id}</span> <span className="tile-number">{line.name}</span>
        <br />
        <span>{say(`state.${summary.state}`)}</span>
        <span className="soft">
          {' '}
          · {line.belt}
          {die === undefined ? '' : ` · ${die}`}
        </span>
      </span>
    </Link>
  );
}
