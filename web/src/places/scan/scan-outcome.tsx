import { Link } from 'wouter';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { cardAddress } from '../card/card-address.ts';
import type { Judged } from './judge-code.ts';

interface ScanOutcomeProps {
  readonly judged: Exclude<Judged, { result: 'opens' }>;
  readonly plantName: string;
}

/** What was read and leads nowhere by itself: what it is not, and what to do. A stranger's text stays text. */
export function ScanOutcome({ judged, plantName }: ScanOutcomeProps) {
  const { say } = useSpeech();
  const plant = plantName;
  switch (judged.result) {
    case 'refused':
      return (
        <div className="scan-said" data-why={judged.why}>
          <p className="strong">
            <Mark name="stop" /> <span>{say(`scan.refused.${judged.why}`)}</span>
          </p>
          {judged.text === '' ? null : (
            <p>
              {say('scan.says')} <bdi className="scan-text">{judged.text}</bdi>
            </p>
          )}
        </div>
      );
    case 'unknown':
      return (
        <div className="scan-said" data-why="unknown">
          <p className="strong">
            <Mark name="care" /> <span>{say('scan.unknown', { position: judged.position, plant })}</span>
          </p>
          <p>{say('scan.unknown.next')}</p>
        </div>
      );
    case 'other-plant':
      return (
        <div className="scan-said" data-why="other-plant">
          <p className="strong">
            <Mark name="care" /> <span>{say('scan.other-plant', { plant })}</span>
          </p>
          <p>{say(judged.isHere ? 'scan.other-plant.here' : 'scan.other-plant.none', { position: judged.position })}</p>
          {judged.isHere ? (
            <Link href={cardAddress(judged.position)} className="button">
              {say('scan.open', { position: judged.position })}
            </Link>
          ) : null}
        </div>
      );
  }
}
