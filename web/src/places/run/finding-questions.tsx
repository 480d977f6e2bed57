import type { DefectCode, Finding, InspectionAsk, InspectionMeasure } from '@loopwright/jobs/inspection';
import { runFaces } from '@loopwright/records/run';
import { defectLooks, defectPicture } from '@loopwright/sheets';
import type { InspectionWords } from '@loopwright/words';
import { useState } from 'react';
import { DrawingView } from '../../page/drawing-view.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { BigButton } from './big-button.tsx';
import { useRunShown } from './run-context.tsx';
import { Stepper } from './stepper.tsx';

interface FindingQuestionsProps {
  readonly finding: Finding;
  readonly asks: readonly InspectionAsk[];
  readonly words: InspectionWords;
  readonly onChange: (finding: Finding) => void;
  readonly onRemove: () => void;
  readonly onDone: () => void;
}

/** One finding: both its looks to compare with, on which face, and one question after the other. */
export function FindingQuestions({ finding, asks, words, onChange, onRemove, onDone }: FindingQuestionsProps) {
  const { say } = useSpeech();
  const run = useRunShown();
  const [passed, setPassed] = useState<readonly string[]>([]);
  const { defect, face } = finding;
  const ask = asks.find(({ code }) => !passed.includes(code));
  const pass = (code: string) => setPassed([...passed, code]);
  const answer = (changed: Finding, code: string) => {
    onChange(changed);
    pass(code);
  };
  return (
    <section className="run-panel">
      <h1>{words.name(defect)}</h1>
      {face !== undefined && ask?.code === 'measure' ? null : <Looks defect={defect} words={words} />}
      {face === undefined ? (
        <Answers
          title={say('runs.which-face')}
          tiles={runFaces.map((each) => ({
            shown: run.words.choice(each),
            onTap: () => onChange({ ...finding, face: each }),
          }))}
        />
      ) : ask === undefined ? null : (
        <Question ask={ask} finding={finding} words={words} onAnswer={(changed) => answer(changed, ask.code)} />
      )}
      <div className="run-row run-back">
        <button type="button" className="button run-tile" onClick={onRemove}>
          <span>{say('runs.not-seen')}</span>
        </button>
        {face === undefined || ask === undefined ? (
          <button type="button" className="button run-tile" onClick={onDone}>
            <span>{say('runs.finding-done')}</span>
          </button>
        ) : (
          <button type="button" className="button run-tile" onClick={() => pass(ask.code)}>
            <span>{say('runs.do-not-know')}</span>
          </button>
        )}
      </div>
    </section>
  );
}

function Looks({ defect, words }: { readonly defect: DefectCode; readonly words: InspectionWords }) {
  return (
    <>
      <div className="run-row run-looks">
        {defectLooks[defect].map((look) => (
          <DrawingView key={look} drawing={defectPicture(defect, look, words.look(defect))} />
        ))}
      </div>
      <p>{words.look(defect)}</p>
    </>
  );
}

interface QuestionProps {
  readonly ask: InspectionAsk;
  readonly finding: Finding;
  readonly words: InspectionWords;
  readonly onAnswer: (finding: Finding) => void;
}

function Question({ ask, finding, words, onAnswer }: QuestionProps) {
  const { say } = useSpeech();
  const title = words.ask(ask);
  if (ask.code === 'measure') return <MeasureQuestion {...{ ask, finding, words, onAnswer }} />;
  const tiles =
    ask.code === 'cause'
      ? ask.answers.map((each) => ({ shown: words.answer(each), onTap: () => onAnswer({ ...finding, answer: each }) }))
      : ask.code === 'place'
        ? ask.places.map((each) => ({ shown: words.place(each), onTap: () => onAnswer({ ...finding, place: each }) }))
        : [true, false].map((opens) => ({
            shown: say(opens ? 'runs.opens' : 'runs.stays-shut'),
            onTap: () => onAnswer({ ...finding, opens }),
          }));
  return <Answers title={title} tiles={tiles} />;
}

/** Steps and ends of what is measured on a splice: as fine as tape, gauge and eye read. */
const steppers: Readonly<Record<InspectionMeasure, { step: number; most: number }>> = {
  bow: { step: 0.0005, most: 0.05 },
  'edge-step': { step: 0.0001, most: 0.02 },
  'thickness-step': { step: 0.000_05, most: 0.005 },
  outline: { step: 0.05, most: 1 },
  void: { step: 0.0005, most: 0.02 },
  colour: { step: 0.5, most: 30 },
  'tip-gap': { step: 0.0001, most: 0.01 },
  'mesh-shift': { step: 0.0001, most: 0.01 },
  'sliver-length': { step: 0.001, most: 0.1 },
  'length-off': { step: 0.001, most: 0.3 },
  'print-depth': { step: 0.000_05, most: 0.005 },
  speck: { step: 0.0001, most: 0.02 },
};

function MeasureQuestion({ ask, finding, words, onAnswer }: QuestionProps & { ask: Measuring }) {
  const { say } = useSpeech();
  const { measure } = ask;
  const [value, setValue] = useState(finding.value ?? 0);
  const { step, most } = steppers[measure];
  return (
    <>
      <p className="strong">{words.ask(ask)}</p>
      <Stepper
        label={words.measure(measure)}
        value={value}
        shown={words.value(measure, value)}
        note={words.measure(measure)}
        step={step}
        least={0}
        most={most}
        onChange={setValue}
      />
      <BigButton onTap={() => onAnswer({ ...finding, value })}>{say('runs.reads-so')}</BigButton>
    </>
  );
}

type Measuring = Extract<InspectionAsk, { code: 'measure' }>;

interface AnswersProps {
  readonly title: string;
  readonly tiles: readonly { readonly shown: string; readonly onTap: () => void }[];
}

function Answers({ title, tiles }: AnswersProps) {
  return (
    <>
      <p className="strong">{title}</p>
      <div className="run-tiles">
        {tiles.map(({ shown, onTap }) => (
          <button key={shown} type="button" className="button run-tile" onClick={onTap}>
            <span>{shown}</span>
          </button>
        ))}
      </div>
    </>
  );
}
