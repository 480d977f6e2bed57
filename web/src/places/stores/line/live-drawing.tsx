import type { Line, Measurement } from '@loopwright/plant';
import { figureOf, threadDrawing } from '@loopwright/sheets';
import { DrawingView } from '../../../page/drawing-view.tsx';
import { FigureView } from '../../../page/figure-view.tsx';
import { Mark } from '../../../page/mark.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { faultSentence } from './fault-sentence.ts';
import { layoutSketch } from './layout-sketch.ts';
import type { LoopFault, LoopNow } from './loop-now.ts';
import { pulleyMap } from './pulley-map.ts';
import type { GeometryReading } from './read-geometry.ts';

interface LoopDrawingProps {
  readonly loop: LoopNow;
  readonly line: Line;
  readonly layout: GeometryReading['layout'];
}

/** The belt as it runs, true to the numbers; or its pulleys, with the one that stands in the way marked. */
export function LoopDrawing({ loop, line, layout }: LoopDrawingProps) {
  const speech = useSpeech();
  const { path, fault, pulleys } = loop;
  if (path !== undefined) return <DrawingView drawing={threadDrawing(path, line, speech)} />;
  const marked = fault?.pulley;
  const alt = speech.say(marked === undefined ? 'geometry.map' : 'geometry.map.marked', {
    number: (marked ?? 0) + 1,
  });
  return (
    <>
      {pulleys.length === 0 ? null : <DrawingView drawing={pulleyMap(pulleys, marked, alt)} />}
      {fault === undefined ? null : <FaultText fault={fault} loop={loop} layout={layout} />}
    </>
  );
}

/** The drawing and the length together, in sight while one types. */
export function LiveStrip({ loop, line, layout }: LoopDrawingProps) {
  const speech = useSpeech();
  return (
    <div className="live">
      <LoopDrawing loop={loop} line={line} layout={layout} />
      {loop.path === undefined ? null : (
        <p className="live-length">
          {speech.say('geometry.length')} <FigureView figure={figureOf(loop.path.length, speech)} />
        </p>
      )}
    </div>
  );
}

function FaultText({ fault, loop, layout }: Omit<LoopDrawingProps, 'line'> & { readonly fault: LoopFault }) {
  const speech = useSpeech();
  const numbers = new Map(loop.pulleys.map(({ id }, at) => [id, at + 1]));
  return (
    <div className="caution caution-stop" role="status">
      <Mark name="stop" />
      <div>
        <p>{speech.say('geometry.refused')}</p>
        <p>{faultSentence(speech, fault, numbers, layout)}</p>
      </div>
    </div>
  );
}

interface SketchProps {
  readonly reading: GeometryReading;
  readonly layout: NonNullable<GeometryReading['layout']>;
  readonly focus?: Measurement | undefined;
}

/** The sketch of a layout, and where the measurement is taken. */
export function Sketch({ reading, layout, focus }: SketchProps) {
  const { say } = useSpeech();
  const { driveEnd, takeUpEnd } = reading;
  const alt = say('geometry.sketch', { layout: say(`layout.${layout}`) });
  const wish = { layout, driveEnd, takeUpEnd, alt };
  return <DrawingView drawing={layoutSketch(focus === undefined ? wish : { ...wish, focus })} />;
}
