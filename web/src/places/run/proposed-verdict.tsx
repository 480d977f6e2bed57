import type { Finding, Inspection } from '@loopwright/jobs/inspection';
import { type RunReason, type RunVerdict, runChange, verdicts } from '@loopwright/records/run';
import type { InspectionWords } from '@loopwright/words';
import { useState } from 'react';
import { keyed } from '../../page/keyed.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { BigButton } from './big-button.tsx';
import { useRunShown } from './run-context.tsx';
import { Tiles } from './tiles.tsx';

interface ProposedVerdictProps {
  readonly inspection: Inspection;
  readonly findings: readonly Finding[];
  readonly words: InspectionWords;
  readonly onBack: () => void;
}

/** Why somebody is milder than the catalogue. */
const milderReasons: readonly RunReason[] = ['asked-lead', 'maker-says', 'line-must-run'];

/** Verdict and reasons, what to do now and next time. Milder than proposed asks for a reason and another badge. */
export function ProposedVerdict({ inspection, findings, words, onBack }: ProposedVerdictProps) {
  const { say } = useSpeech();
  const run = useRunShown();
  const [choosing, setChoosing] = useState(false);
  const { verdict: proposed, level, because, doNow, nextTime } = inspection;
  const decide = (verdict: RunVerdict, reason?: RunReason) => {
    const kept = findings.map(({ defect, face, value }) => ({
      defect,
      ...(face && { face }),
      ...(value !== undefined && { value }),
    }));
    const thing = { run: run.view.run, verdict, proposed, findings: kept, ...(reason && { reason }) };
    void run.write([runChange('run.inspected', thing)]).then((done) => done && run.show({ name: 'step' }));
  };
  if (choosing) return <OtherVerdict proposed={proposed} onDecide={decide} onBack={() => setChoosing(false)} />;
  return (
    <section className="run-panel">
      <h1>{run.words.choice(proposed)}</h1>
      <p className="soft">
        {words.line('proposed')} · {words.level(level)}. {words.line('no-proof')}{' '}
        {inspection.secondPerson ? words.line('second') : ''}
      </p>
      <ul className="run-said">
        {keyed(because).map(({ key, item }) => (
          <li key={key}>{words.because(item)}</li>
        ))}
      </ul>
      <Lines title={say('runs.do-now')} lines={doNow.map(words.now)} />
      <div className="run-row run-back">
        <button type="button" className="button run-tile" onClick={onBack}>
          <span>{say('runs.back')}</span>
        </button>
        <button type="button" className="button run-tile" onClick={() => setChoosing(true)}>
          <span>{say('runs.other-answer')}</span>
        </button>
      </div>
      <BigButton onTap={() => decide(proposed)} disabled={run.saving}>
        {run.words.choice(proposed)}
      </BigButton>
      <Lines title={say('runs.next-time')} lines={nextTime.map(words.next)} />
    </section>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div>
      <h2>{title}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

interface OtherVerdictProps {
  readonly proposed: RunVerdict;
  readonly onDecide: (verdict: RunVerdict, reason?: RunReason) => void;
  readonly onBack: () => void;
}

function OtherVerdict({ proposed, onDecide, onBack }: OtherVerdictProps) {
  const { say } = useSpeech();
  const { words } = useRunShown();
  const [milder, setMilder] = useState<RunVerdict>();
  if (milder !== undefined) {
    const tiles = milderReasons.map((reason) => ({
      key: reason,
      shown: words.reason(reason),
      held: true,
      onTap: () => onDecide(milder, reason),
    }));
    const back = () => setMilder(undefined);
    return <Tiles title={words.choice(milder)} said={<p>{say('runs.milder')}</p>} tiles={tiles} onBack={back} />;
  }
  const others = verdicts.filter((verdict) => verdict !== proposed);
  const tiles = others.map((verdict) => ({
    key: verdict,
    shown: words.choice(verdict),
    onTap: () => (verdicts.indexOf(verdict) < verdicts.indexOf(proposed) ? setMilder(verdict) : onDecide(verdict)),
  }));
  return <Tiles title={say('runs.other-answer')} tiles={tiles} onBack={onBack} />;
}
