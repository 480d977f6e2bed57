import { problemSentence } from '@loopwright/words';
import { keyed } from '../page/keyed.ts';
import { StartLink } from '../places/start/start-link.tsx';
import { EverythingLink } from '../places/stores/everything-link.tsx';
import type { PlantFault } from '../plant/load-plant.ts';
import { useSpeech } from '../speech/use-speech.tsx';
import { Said } from './said.tsx';

const mostShown = 20;

interface PlantProblemProps {
  readonly fault: PlantFault;
  readonly onAgain: () => void;
}

/** The plant could not be read: why, and what to do. Mistakes in its files are named one by one. */
export function PlantProblem({ fault, onAgain }: PlantProblemProps) {
  const speech = useSpeech();
  const { say } = speech;
  const title = say('app.plant.failed');
  if (fault.kind !== 'mistakes') {
    return (
      <Said title={title} next={say(`app.plant.${fault.kind}`, { reason: fault.reason })} onAgain={onAgain}>
        <StartLink begun={false} />
        <EverythingLink />
      </Said>
    );
  }
  const { problems } = fault;
  return (
    <Said title={title} next={say('app.plant.mistakes', { count: problems.length })} onAgain={onAgain}>
      <ul className="list">
        {keyed(problems.slice(0, mostShown)).map(({ key, item }) => (
          <li key={key}>{problemSentence(speech, item)}</li>
        ))}
      </ul>
      <StartLink begun={false} />
      <EverythingLink />
    </Said>
  );
}
