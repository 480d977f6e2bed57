import type { LinesOverview } from '@loopwright/jobs';
import { ListParts } from '../../long/list-parts.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { PositionTile } from './position-tile.tsx';

interface LineGroupProps {
  readonly group: LinesOverview['lines'][number];
  readonly chosen: string | undefined;
  /** How many of its positions are drawn before anybody looked. */
  readonly first: number;
}

const tilesInPart = 30;

/** A line with its belt and its positions in the order in which they stand. */
export function LineGroup({ group, chosen, first }: LineGroupProps) {
  const { write } = useSpeech();
  const { line, positions } = group;
  const id = `line-${line.id}`;
  return (
    <section className="line" aria-labelledby={id}>
      <div className="line-head">
        <h2 id={id}>
          {line.id} <span className="line-name">{line.name}</span>
        </h2>
        <p className="soft">
          {line.belt} · {write(line.width_m, 'length')}
        </p>
      </div>
      <ListParts items={positions} size={tilesInPart} first={first} nameOf={({ position }) => position.id}>
        {(part) => (
          <ul className="tiles">
            {part.map((summary) => (
              <li key={summary.position.id}>
                <PositionTile summary={summary} chosen={summary.position.id === chosen} />
              </li>
            ))}
          </ul>
        )}
      </ListParts>
    </section>
  );
}
