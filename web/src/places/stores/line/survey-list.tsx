import { type Measurement, surveyQuestions } from '@loopwright/plant';
import { useRef, useState } from 'react';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { type EditorProps, GeometryEnd } from './geometry-end.tsx';
import { measurementField } from './geometry-fields.ts';
import { LayoutChoice } from './layout-choice.tsx';
import { hasTakeUp } from './layout-facts.ts';
import { LiveStrip, Sketch } from './live-drawing.tsx';
import { LoopFacts } from './loop-facts.tsx';
import type { Worst } from './loop-now.ts';
import { MeasureRow, SurveyQuality } from './measure-row.tsx';
import { TakeUpQuestions } from './take-up-questions.tsx';

/** All questions of a survey below each other, the drawing beside them in mind and in sight. */
export function SurveyList(props: EditorProps) {
  const { plant, state } = props;
  const { say } = useSpeech();
  const place = useRef<HTMLDivElement>(null);
  const [focus, setFocus] = useState<Measurement>();
  const { reading, loop, known } = state;
  const { layout } = reading;
  const again = ({ measurement }: Worst) => {
    if (measurement === undefined) return;
    const { name } = measurementField(measurement);
    place.current?.querySelector<HTMLElement>(`[data-field="${name}"] input`)?.focus();
  };
  return (
    <div ref={place} className="survey-step">
      {props.head}
      <LayoutChoice state={state} />
      {layout === undefined ? null : (
        <>
          {loop === undefined ? (
            <div className="live">
              <Sketch reading={reading} layout={layout} focus={focus} />
            </div>
          ) : (
            <LiveStrip loop={loop} line={reading.line ?? known.line} layout={layout} />
          )}
          <section className="part">
            <h2>{say('geometry.measure')}</h2>
            {surveyQuestions(layout).map(({ field }) => (
              <fieldset key={field} onFocus={() => setFocus(field)}>
                <MeasureRow plant={plant} state={state} measurement={field} tried={false} />
              </fieldset>
            ))}
          </section>
          {hasTakeUp(layout) ? <TakeUpQuestions plant={plant} state={state} tried={false} /> : null}
          <SurveyQuality plant={plant} state={state} />
          <Waiting count={reading.missing.length} />
          {loop === undefined ? null : <LoopFacts loop={loop} onAgain={again} />}
        </>
      )}
      <GeometryEnd {...props} />
    </div>
  );
}

/** How much is still to be measured. */
export function Waiting({ count }: { readonly count: number }) {
  const { say } = useSpeech();
  return <p role="status">{count === 0 ? '' : say('geometry.waiting', { count })}</p>;
}
