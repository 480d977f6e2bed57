import type { Meanwhile } from '@loopwright/jobs/press-run';
import { keyed } from '../../page/keyed.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { BigButton } from './big-button.tsx';
import { useRunShown } from './run-context.tsx';

interface MeanwhilePanelProps {
  readonly meanwhile: readonly Meanwhile[];
  readonly onGoOn: () => void;
}

/** What happened while nobody looked, before anything else. */
export function MeanwhilePanel({ meanwhile, onGoOn }: MeanwhilePanelProps) {
  const { say } = useSpeech();
  const { words, plant } = useRunShown();
  const said = meanwhile.map((each) => words.meanwhile(withBadge(each, (id) => plant.badges[id]?.word ?? id)));
  return (
    <section className="run-panel">
      <h1>{say('runs.meanwhile')}</h1>
      <ul className="run-said">
        {keyed(said).map(({ key, item }) => (
          <li key={key}>{item}</li>
        ))}
      </ul>
      <BigButton onTap={onGoOn} keyed>
        {say('runs.go-on')}
      </BigButton>
    </section>
  );
}

function withBadge({ data, ...rest }: Meanwhile, wordOf: (id: string) => string): Meanwhile {
  const { by } = data;
  return { ...rest, data: typeof by === 'string' ? { ...data, badge: wordOf(by) } : data };
}
