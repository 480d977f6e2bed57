import { surveyQuestions } from '@loopwright/plant';
import { valueText } from '../../../form/value-text.ts';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { measurementField } from './geometry-fields.ts';
import { hasTakeUp } from './layout-facts.ts';
import type { SurveyStep } from './survey-steps.tsx';
import type { GeometryState } from './use-geometry.ts';

interface MeasuredListProps {
  readonly state: GeometryState;
  readonly onGo: (step: SurveyStep) => void;
}

/** Everything that was measured, each a way back to its question. */
export function MeasuredList({ state, onGo }: MeasuredListProps) {
  const speech = useSpeech();
  const { reading } = state;
  const { layout, survey } = reading;
  if (layout === undefined) return null;
  const rows: readonly (readonly [step: SurveyStep, label: string, value: string])[] = [
    ['layout', speech.say(`layout.${layout}`), ''],
    ...surveyQuestions(layout).map(({ field, id }) => {
      const value = survey === undefined ? '–' : valueText(speech, 'surveys', measurementField(field), survey[field]);
      return [field, speech.has(id) ? speech.say(id) : field, value] as const;
    }),
    ...(hasTakeUp(layout) ? [['take-up', speech.say('geometry.takeUp'), ''] as const] : []),
  ];
  return (
    <section className="part">
      <h2>{speech.say('geometry.measured')}</h2>
      <ul className="found">
        {rows.map(([step, label, value]) => (
          <li key={step}>
            <button type="button" className="found-row measured-row" onClick={() => onGo(step)}>
              <span>{label}</span>
              <span className="found-id">{value}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
