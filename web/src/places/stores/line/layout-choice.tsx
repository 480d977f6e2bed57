import { type SurveyLayout, surveyLayouts } from '@loopwright/plant';
import { useId } from 'react';
import { ChoiceGroup } from '../../../settings/choice-group.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { asksDriveEnd, asksTakeUpEnd, type LineEnd } from './layout-facts.ts';
import { Sketch } from './live-drawing.tsx';
import type { GeometryState } from './use-geometry.ts';

/** Which layout, by pictures; then at which ends drive and take-up stand, where that is open. */
export function LayoutChoice({ state }: { readonly state: GeometryState }) {
  const { say } = useSpeech();
  const name = useId();
  const { reading } = state;
  const { layout } = reading;
  const choose = (field: string) => (text: string) => state.changeSurvey(field, { text });
  return (
    <>
      <fieldset className="choice">
        <legend>{say('geometry.layout')}</legend>
        <p className="soft">{say('geometry.layout.help')}</p>
        <div className="layout-options">
          {surveyLayouts.map((value) => (
            <label className="choice-option layout-option" key={value}>
              <input
                type="radio"
                name={name}
                checked={value === layout}
                onChange={() => choose('layout')(value satisfies SurveyLayout)}
              />
              <span>
                {say(`layout.${value}`)}
                <Sketch reading={reading} layout={value} />
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      {layout !== undefined && asksDriveEnd(layout) ? (
        <EndChoice title={say('geometry.driveEnd')} chosen={reading.driveEnd} onChoose={choose('driveEnd')} />
      ) : null}
      {layout !== undefined && asksTakeUpEnd(layout) ? (
        <EndChoice title={say('geometry.takeUpEnd')} chosen={reading.takeUpEnd} onChoose={choose('takeUpEnd')} />
      ) : null}
    </>
  );
}

interface EndChoiceProps {
  readonly title: string;
  readonly chosen: LineEnd | undefined;
  readonly onChoose: (end: LineEnd) => void;
}

function EndChoice({ title, chosen, onChoose }: EndChoiceProps) {
  const { say } = useSpeech();
  return (
    <ChoiceGroup
      title={title}
      options={(['infeed', 'discharge'] as const).map((value) => ({ value, shown: say(`geometry.end.${value}`) }))}
      chosen={chosen}
      onChoose={onChoose}
    />
  );
}
