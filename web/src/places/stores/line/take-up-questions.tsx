import { type Plant, takeUpKinds } from '@loopwright/plant';
import { choiceWord } from '../../../form/field-words.ts';
import { ChoiceGroup } from '../../../settings/choice-group.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { EntryRow } from './entry-row.tsx';
import { takeUpOriginal } from './geometry.ts';
import { takeUpFields } from './geometry-fields.ts';
import { takeUpPresence } from './read-geometry.ts';
import { directionName, directionNames, directionSaid, kindSaid } from './read-take-up.ts';
import type { GeometryState } from './use-geometry.ts';

interface TakeUpQuestionsProps {
  readonly plant: Plant;
  readonly state: GeometryState;
  readonly tried: boolean;
}

/** What tightens the belt, which way, and how far it can still go: as one sees it at the line. */
export function TakeUpQuestions({ plant, state, tried }: TakeUpQuestionsProps) {
  const speech = useSpeech();
  const { say } = speech;
  const { geometry, known, reading } = state;
  const presence = takeUpPresence(geometry.way, reading.layout);
  const kind = kindSaid(geometry.takeUp, known.line, presence);
  const kinds = takeUpKinds.filter((each) => each !== 'none' || presence === 'open');
  const row = {
    plant,
    kind: 'lines',
    entries: geometry.takeUp,
    original: takeUpOriginal(known.line),
    problems: reading.takeUpProblems,
    tried,
    source: 'measured',
    onChange: state.changeTakeUp,
  } as const;
  return (
    <section className="part">
      <h2>{say('geometry.takeUp')}</h2>
      <ChoiceGroup
        title={say('field.lines.takeUpKind')}
        options={kinds.map((value) => ({ value, shown: choiceWord(speech, 'takeUpKind', value) }))}
        chosen={kind}
        onChoose={(text) => state.changeTakeUp('takeUpKind', { text })}
      />
      {kind === 'none' ? null : (
        <>
          <DirectionChoice state={state} />
          <p>{say('geometry.takeUp.stands')}</p>
          <EntryRow {...row} field={takeUpFields.back} />
          <EntryRow {...row} field={takeUpFields.on} />
          {kind === 'screw' ? null : <EntryRow {...row} field={takeUpFields.force} />}
        </>
      )}
    </section>
  );
}

/** An end take-up moves outwards, which need not be asked. */
function DirectionChoice({ state }: Pick<TakeUpQuestionsProps, 'state'>) {
  const { say } = useSpeech();
  const { geometry, known, reading } = state;
  if (geometry.way === 'survey' && reading.takeUpEnd !== undefined) return null;
  return (
    <ChoiceGroup
      title={say('geometry.takeUp.direction')}
      options={directionNames.map((value) => ({ value, shown: say(`geometry.takeUp.direction.${value}`) }))}
      chosen={directionName(directionSaid(geometry.takeUp, known.line))}
      onChoose={(text) => state.changeTakeUp('direction', { text })}
    />
  );
}
