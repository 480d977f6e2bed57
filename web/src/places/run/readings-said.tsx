import type { MeasureAsked } from '@loopwright/jobs/press-run';
import { isQuantityKind } from '@loopwright/words';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';

/** What is read at a step, and whether somebody has read it. */
export function ReadingsSaid({ asked }: { readonly asked: readonly MeasureAsked[] }) {
  const { say, write } = useSpeech();
  const { words } = useRunShown();
  return (
    <dl className="run-readings">
      {asked.map(({ measure, kind, expected, read }) => {
        const value = read ?? expected?.value;
        const text = value === undefined ? '–' : isQuantityKind(kind) ? write(value, kind) : String(value);
        const note =
          read !== undefined ? say('runs.read') : expected ? say('runs.on-card') : words.line('measure-this');
        return (
          <div key={measure}>
            <dt>{words.measure(measure)}</dt>
            <dd>
              <strong>{text}</strong> <span className="caption">{note}</span>
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
