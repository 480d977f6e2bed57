import type { LinesOverview, PositionSummary } from '@loopwright/jobs';
import { Link } from 'wouter';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { cardAddress } from '../card/card-address.ts';

/** The torn position to go to first: the one that has stood longest. */
export function firstTorn({ lines, counts }: LinesOverview): PositionSummary | undefined {
  if (counts.torn === 0) return undefined;
  return lines
    .flatMap((group) => (group.counts.torn === 0 ? [] : group.positions))
    .filter((position) => position.state === 'torn')
    .toSorted((a, b) => (a.position.since ?? '').localeCompare(b.position.since ?? ''))[0];
}

/** The one main action of the list: the card of what is torn. Nothing torn, no main action. */
export function FirstAction({ overview }: { readonly overview: LinesOverview }) {
  const first = firstTorn(overview);
  if (first === undefined) return null;
  return (
    <div className="first-action">
      <CardAction summary={first} />
    </div>
  );
}

/** The way to a position's card, as the main action. */
export function CardAction({ summary }: { readonly summary: PositionSummary }) {
  const { say } = useSpeech();
  return (
    <Link href={cardAddress(summary.position.id)} className="button main-action">
      {summary.state === 'torn' ? <Mark name="torn" /> : null}
      <span>
        {say('card.title')} <span className="whole">{summary.position.id}</span>
      </span>
    </Link>
  );
}
