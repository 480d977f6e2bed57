import type { MeasureAsked } from '@loopwright/jobs/press-run';
import type { RunMeasure } from '@loopwright/records/run';
import { isQuantityKind } from '@loopwright/words';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';
import { Stepper } from './stepper.tsx';

/** What somebody has read, SI; what nobody touched is not among it. */
export type ReadValues = Readonly<Partial<Record<RunMeasure, number>>>;

interface MeasuresProps {
  readonly asked: readonly MeasureAsked[];
  readonly values: ReadValues;
  readonly onChange: (values: ReadValues) => void;
}

/** Steppers for what is read at a step, one row each. */
export function Measures({ asked, values, onChange }: MeasuresProps) {
  const { say, write } = useSpeech();
  const { words } = useRunShown();
  return (
    <div className="run-measures">
      {asked.map(({ measure, kind, start, expected, step, least, most }) => {
        const value = values[measure] ?? start;
        const written = (number: number) => (isQuantityKind(kind) ? write(number, kind) : String(number));
        const touched = values[measure] !== undefined;
        return (
          <Stepper
            key={measure}
            label={words.measure(measure)}
            value={value}
            shown={written(value)}
            note={touched ? say('runs.read') : expected ? say('runs.tap-if-read') : words.line('measure-this')}
            step={step}
            least={least}
            most={most}
            touched={touched}
            onChange={(next) => onChange({ ...values, [measure]: next })}
          />
        );
      })}
    </div>
  );
}
