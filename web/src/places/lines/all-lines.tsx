import type { LinesOverview } from '@loopwright/jobs';
import { useMemo } from 'react';
import { LongList } from '../../long/long-list.tsx';
import { useAfterFirstPaint } from '../../offline/use-after-first-paint.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { StartLink } from '../start/start-link.tsx';
import { LineGroup } from './line-group.tsx';

/** Every line with its positions, or how to begin. */
export function AllLines({
  overview,
  chosen,
}: {
  readonly overview: LinesOverview;
  readonly chosen: string | undefined;
}) {
  const { say } = useSpeech();
  if (overview.lines.length === 0) {
    return (
      <div className="said">
        <p>{say('app.lines.none')}</p>
        <StartLink begun />
      </div>
    );
  }
  return <Groups lines={overview.lines} chosen={chosen} />;
}

/** Positions drawn at once: more than a phone shows. Lines further down come right after the first paint. */
const drawnFirst = 36;
const tileHeight_px = 12;

function Groups({ lines, chosen }: { readonly lines: LinesOverview['lines']; readonly chosen: string | undefined }) {
  const before = useMemo(() => countsBefore(lines), [lines]);
  const all = useAfterFirstPaint();
  const first = (i: number): number => drawnFirst - (before[i] ?? 0);
  return (
    <LongList count={before.at(-1) ?? 0} item_px={tileHeight_px}>
      {lines.map((group, i) =>
        all || first(i) > 0 ? <LineGroup key={group.line.id} group={group} chosen={chosen} first={first(i)} /> : null,
      )}
    </LongList>
  );
}

/** How many positions stand before each line, and in all. */
function countsBefore(lines: LinesOverview['lines']): readonly number[] {
  const counts = [0];
  for (const { positions } of lines) counts.push((counts.at(-1) ?? 0) + positions.length);
  return counts;
}
