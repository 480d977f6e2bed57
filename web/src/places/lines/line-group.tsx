import type { LinesOverview } from '@loopwright/jobs';
import { useSpeech } from '../../speech/use-speech.tsx';
import { PositionTile } from './position-tile.tsx';

interface LineGroupProps {
  readonly group: LinesOverview['lines'][number];
  readonly chosen: string | undefined;
}

/** A line with its belt and its positions in the order in which they stand. */
export function LineGroup({ group, chosen }: LineGroupProps) {
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
      <ul className="tiles">
        {positions.map((summary) => (
          <li key={summary.position.id}>
            <PositionTile summary={summary} chosen={summary.position.id === chosen} />
          </li>
        ))}
      </ul>
    </section>
  );
}
