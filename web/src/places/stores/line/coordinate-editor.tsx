import { type Pulley, type Source, sources } from '@loopwright/plant';
import { choiceWord } from '../../../form/field-words.ts';
import { ChoiceGroup } from '../../../settings/choice-group.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { changedRow, freePulleyId, movedRow, newRow } from './geometry.ts';
import { type EditorProps, GeometryEnd } from './geometry-end.tsx';
import { LiveStrip } from './live-drawing.tsx';
import { LoopFacts } from './loop-facts.tsx';
import type { LoopNow } from './loop-now.ts';
import { PulleyFields } from './pulley-fields.tsx';
import { TakeUpQuestions } from './take-up-questions.tsx';
import type { GeometryState } from './use-geometry.ts';

/** The table of pulleys: each with its place, size and turn; added, moved and removed by buttons. */
export function CoordinateEditor(props: EditorProps) {
  const { plant, state } = props;
  const speech = useSpeech();
  const { say } = speech;
  const { geometry, known, reading } = state;
  const { rows } = geometry;
  const loop = state.loop ?? placesOnly(reading.pulleys);
  const add = () =>
    state.changeRows([...rows, newRow(freePulleyId(plant, known.line.id, rows), known.line.id, {}, speech.units)]);
  return (
    <>
      {props.head}
      <p>{say('geometry.order')}</p>
      <SourceChoice state={state} />
      <LiveStrip loop={loop} line={reading.line ?? known.line} layout={undefined} />
      {rows.map((row, at) => (
        <PulleyFields
          key={row.key}
          plant={plant}
          row={row}
          number={at + 1}
          isLast={at === rows.length - 1}
          original={known.pulleys.find(({ id }) => id === row.key)}
          problems={reading.pulleyProblems[at] ?? {}}
          onChange={(field, entry) => state.changeRows(changedRow(rows, row.key, field, entry))}
          onMove={(by) => state.changeRows(movedRow(rows, at, by))}
          onRemove={() => state.changeRows(rows.toSpliced(at, 1))}
        />
      ))}
      <button type="button" className="button" onClick={add}>
        {say('geometry.add')}
      </button>
      <TakeUpQuestions plant={plant} state={state} tried={false} />
      <Incomplete pulleys={reading.pulleys} />
      <LoopFacts loop={loop} />
      <GeometryEnd {...props} />
    </>
  );
}

/** While some rows cannot be read, those that can are drawn where they stand. */
function placesOnly(pulleys: readonly (Pulley | undefined)[]): LoopNow {
  return { pulleys: pulleys.filter((pulley) => pulley !== undefined) };
}

function Incomplete({ pulleys }: { readonly pulleys: readonly (Pulley | undefined)[] }) {
  const { say } = useSpeech();
  const count = pulleys.filter((pulley) => pulley === undefined).length;
  return <p role="status">{count === 0 ? '' : say('geometry.waiting.rows', { count })}</p>;
}

/** One answer for all pulleys: where their numbers come from. */
function SourceChoice({ state }: { readonly state: GeometryState }) {
  const speech = useSpeech();
  const { geometry, known } = state;
  const said = geometry.rows.map(({ key, entries }) => {
    const entry = entries['source'];
    return entry?.kept === true ? known.pulleys.find(({ id }) => id === key)?.source : entry?.text;
  });
  const choose = (source: Source) =>
    state.changeRows(geometry.rows.map((row) => ({ ...row, entries: { ...row.entries, source: { text: source } } })));
  const asked = sources.filter((source) => source !== 'computed');
  return (
    <ChoiceGroup
      title={speech.say('geometry.source')}
      options={asked.map((value) => ({ value, shown: choiceWord(speech, 'source', value) }))}
      chosen={asked.find((source) => said.length > 0 && said.every((each) => each === source))}
      onChoose={choose}
    />
  );
}
