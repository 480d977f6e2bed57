import type { Measurement, Plant } from '@loopwright/plant';
import { useState } from 'react';
import { Mark } from '../../../page/mark.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { EntryRow } from './entry-row.tsx';
import { errorFields, measurementField, sourceField } from './geometry-fields.ts';
import type { GeometryState } from './use-geometry.ts';

interface MeasureRowProps {
  readonly plant: Plant;
  readonly state: GeometryState;
  readonly measurement: Measurement;
  readonly tried: boolean;
}

function rowOf(plant: Plant, state: GeometryState, tried: boolean) {
  const { geometry, known, reading } = state;
  const source = geometry.survey['source'];
  return {
    plant,
    kind: 'surveys',
    entries: geometry.survey,
    original: known.survey,
    problems: reading.surveyProblems,
    tried,
    source: source?.kept === true ? (known.survey?.source ?? '') : (source?.text ?? ''),
    onChange: state.changeSurvey,
  } as const;
}

/** With what one measures, and along what. */
function toolFor(measurement: Measurement): 'tape' | 'between' | 'drop' | 'caliper' {
  if (measurement.endsWith('Diameter_m')) return 'caliper';
  if (measurement.endsWith('Drop_m')) return 'drop';
  return measurement.endsWith('Distance_m') ? 'tape' : 'between';
}

/** One measurement: what to measure, with which tool, and the number with its unit and source. */
export function MeasureRow({ plant, state, measurement, tried }: MeasureRowProps) {
  const { say } = useSpeech();
  return (
    <>
      <EntryRow {...rowOf(plant, state, tried)} field={measurementField(measurement)} ownSources />
      <p className="caption">{say(`geometry.tool.${toolFor(measurement)}`)}</p>
    </>
  );
}

/** Where the numbers come from, and how good tape and caliper are: usual values stand there unless somebody knows better. */
export function SurveyQuality({ plant, state }: Omit<MeasureRowProps, 'measurement' | 'tried'>) {
  const { say } = useSpeech();
  const row = rowOf(plant, state, true);
  const fields = [...errorFields, sourceField];
  const [opened, setOpened] = useState(false);
  const open = opened || fields.some(({ key }) => row.problems[key] !== undefined);
  return (
    <section className="part">
      <button type="button" className="button more-button" aria-expanded={open} onClick={() => setOpened(!open)}>
        <Mark name="down" />
        {say('geometry.errors')}
      </button>
      {open ? fields.map((field) => <EntryRow key={field.key} {...row} field={field} />) : null}
    </section>
  );
}
