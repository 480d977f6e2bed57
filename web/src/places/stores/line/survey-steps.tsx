import { type Measurement, surveyQuestions } from '@loopwright/plant';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { type EditorProps, GeometryEnd } from './geometry-end.tsx';
import { LayoutChoice } from './layout-choice.tsx';
import { hasTakeUp } from './layout-facts.ts';
import { LiveStrip, LoopDrawing, Sketch } from './live-drawing.tsx';
import { LoopFacts } from './loop-facts.tsx';
import { MeasureRow, SurveyQuality } from './measure-row.tsx';
import { MeasuredList } from './measured-list.tsx';
import type { GeometryReading } from './read-geometry.ts';
import { Waiting } from './survey-list.tsx';
import { TakeUpQuestions } from './take-up-questions.tsx';

/** One screen of the survey. */
export type SurveyStep = 'layout' | Measurement | 'take-up' | 'result';

/** The screens of a layout, in walking order. */
function surveySteps(layout: GeometryReading['layout']): readonly SurveyStep[] {
  if (layout === undefined) return ['layout'];
  const measured = surveyQuestions(layout).map(({ field }) => field);
  return ['layout', ...measured, ...(hasTakeUp(layout) ? (['take-up'] as const) : []), 'result'];
}

/** Where somebody goes on: at the first thing that is not known. */
function firstOpen({ layout, missing }: GeometryReading): SurveyStep {
  if (layout === undefined) return 'layout';
  return missing[0] ?? 'result';
}

/** The survey, one question a screen. */
export function SurveySteps(props: EditorProps) {
  const { state } = props;
  const { reading } = state;
  const [chosen, setChosen] = useState<SurveyStep>(() => firstOpen(reading));
  const [tried, setTried] = useState(false);
  const steps = surveySteps(reading.layout);
  const step = steps.includes(chosen) ? chosen : 'layout';
  const place = useArrival(step);
  const goTo = (next: SurveyStep | undefined) => {
    setTried(false);
    if (next !== undefined) setChosen(next);
  };
  const by = (count: number) => steps[steps.indexOf(step) + count];
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isWrong(step, reading)) setTried(true);
    else goTo(by(1));
  };
  return (
    <form ref={place} className="survey-step" onSubmit={submit} noValidate data-step={step}>
      {step === 'layout' || step === 'result' ? props.head : null}
      <Screen {...props} step={step} tried={tried} onGo={goTo} />
      {step === 'result' ? <GeometryEnd {...props} /> : null}
      <StepEnd
        canGoOn={step !== 'result' && by(1) !== undefined}
        canGoBack={step !== 'layout'}
        onBack={() => goTo(by(-1))}
      />
      {step === 'layout' || step === 'result' || state.loop === undefined ? null : (
        <LiveStrip loop={state.loop} line={reading.line ?? state.known.line} layout={reading.layout} />
      )}
    </form>
  );
}

/** Whoever comes to a question can type at once, and sees it from its top. */
function useArrival(step: SurveyStep) {
  const place = useRef<HTMLFormElement>(null);
  const before = useRef(step);
  useEffect(() => {
    if (before.current === step) return;
    before.current = step;
    place.current?.scrollIntoView({ block: 'start' });
    if (step === 'layout' || step === 'result') return;
    place.current?.querySelector<HTMLInputElement>('input[inputmode="decimal"]')?.focus({ preventScroll: true });
  }, [step]);
  return place;
}

function isWrong(step: SurveyStep, { surveyProblems, takeUpProblems }: GeometryReading): boolean {
  if (step === 'take-up') return Object.keys(takeUpProblems).length > 0;
  return surveyProblems[step] !== undefined;
}

interface ScreenProps extends EditorProps {
  readonly step: SurveyStep;
  readonly tried: boolean;
  readonly onGo: (step: SurveyStep) => void;
}

function Screen({ step, ...props }: ScreenProps) {
  const { plant, state, tried } = props;
  if (step === 'layout') return <LayoutChoice state={state} />;
  if (step === 'take-up') return <TakeUpQuestions plant={plant} state={state} tried={tried} />;
  if (step === 'result') return <Result {...props} />;
  return <Question {...props} measurement={step} />;
}

function Question({ plant, state, tried, measurement }: Omit<ScreenProps, 'step'> & { measurement: Measurement }) {
  const { say } = useSpeech();
  const { layout } = state.reading;
  if (layout === undefined) return null;
  const fields = surveyQuestions(layout).map(({ field }) => field);
  return (
    <section className="part">
      <h2>{say('geometry.question', { at: fields.indexOf(measurement) + 1, count: fields.length })}</h2>
      <Sketch reading={state.reading} layout={layout} focus={measurement} />
      <MeasureRow key={measurement} plant={plant} state={state} measurement={measurement} tried={tried} />
    </section>
  );
}

function Result({ plant, state, onGo }: Omit<ScreenProps, 'step'>) {
  const { reading, loop, known } = state;
  return (
    <>
      <Waiting count={reading.missing.length} />
      {loop === undefined ? null : (
        <LoopDrawing loop={loop} line={reading.line ?? known.line} layout={reading.layout} />
      )}
      {loop === undefined ? null : (
        <LoopFacts loop={loop} onAgain={({ measurement }) => measurement !== undefined && onGo(measurement)} />
      )}
      <MeasuredList state={state} onGo={onGo} />
      <SurveyQuality plant={plant} state={state} />
    </>
  );
}

interface StepEndProps {
  readonly canGoOn: boolean;
  readonly canGoBack: boolean;
  readonly onBack: () => void;
}

function StepEnd({ canGoOn, canGoBack, onBack }: StepEndProps) {
  const { say } = useSpeech();
  return (
    <div className="form-end">
      {canGoOn ? (
        <button type="submit" className="button main-action">
          {say('geometry.next')}
        </button>
      ) : null}
      {canGoBack ? (
        <button type="button" className="button" onClick={onBack}>
          {say('geometry.back')}
        </button>
      ) : null}
    </div>
  );
}
