import type { PositionSummary } from '@loopwright/jobs';
import { Link } from 'wouter';
import { Mark } from '../../page/mark.tsx';
import { stateShapes } from '../../page/state-word.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { cardAddress } from '../card/card-address.ts';
import { moveByArrows } from './move-focus.ts';

interface PositionTileProps {
  readonly summary: PositionSummary;
  readonly chosen: boolean;
}

/** One position as a target: its number and its state. Whatever is not simply running says so in words. */
export function PositionTile({ summary, chosen }: PositionTileProps) {
  const { say } = useSpeech();
  const { position, state } = summary;
  const shape = stateShapes[state];
  const quiet = state === 'running';
  return (
    <Link
      href={cardAddress(position.id)}
      className={`tile state-${shape}${quiet ? '' : ' tile-spoken'}`}
      aria-current={chosen ? 'page' : undefined}
      onKeyDown={moveByArrows}
    >
      <span className="tile-number">
        <span className="sr">{position.id}, </span>
        {position.number}
      </span>
      <Mark name={shape} />
      <span className={quiet ? 'sr' : undefined}>{say(`state.${state}`)}</span>
    </Link>
  );
}
