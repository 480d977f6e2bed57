import { Link } from 'wouter';
import { useBusy } from '../../../offline/busy.ts';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { PlantStore } from '../../../store/plant-store.ts';
import { FileButton } from '../file-button.tsx';
import { listAddress } from '../store-address.ts';
import { FoundRows } from './found-rows.tsx';
import { tableStages } from './table-ask.ts';
import type { TableKind } from './table-kinds.ts';
import { type TakeState, type TakeTable as Taking, useTakeTable } from './use-take-table.ts';

const accepted = '.csv,.tsv,.txt,.xlsx';

interface TakeTableProps {
  readonly store: PlantStore;
  readonly kind: TableKind;
}

/** From a file to the plant: choose, look, take. */
export function TakeTable({ store, kind }: TakeTableProps) {
  const { say } = useSpeech();
  const taking = useTakeTable(store, kind);
  const { state } = taking;
  useBusy(state.at !== 'start' && state.at !== 'undone');
  return (
    <section className="part table-part" data-at={state.at}>
      <h2>{say('tables.in')}</h2>
      <Step taking={taking} state={state} kind={kind} />
    </section>
  );
}

interface StepProps<S extends TakeState = TakeState> {
  readonly taking: Taking;
  readonly state: S;
  readonly kind: TableKind;
}

type At<A extends TakeState['at']> = Extract<TakeState, { readonly at: A }>;

function Step({ taking, state, kind }: StepProps) {
  if (state.at === 'start' || state.at === 'undone') return <Choose taking={taking} state={state} kind={kind} />;
  if (state.at === 'reading') return <Reading taking={taking} state={state} kind={kind} />;
  if (state.at === 'saving' || state.at === 'undoing') return <Writing taking={taking} state={state} kind={kind} />;
  if (state.at === 'taken') return <Taken taking={taking} state={state} kind={kind} />;
  return <Found taking={taking} state={state} kind={kind} />;
}

function Choose({ taking, state }: StepProps<At<'start'> | At<'undone'>>) {
  const { say } = useSpeech();
  const fault = state.at === 'start' ? state.fault : undefined;
  const quiet = state.at === 'undone' ? say('tables.undone') : state.stopped ? say('tables.stopped') : '';
  return (
    <>
      <p>{say('tables.in.help')}</p>
      <p>{say('tables.in.before')}</p>
      {fault === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {say(`tables.fault.${fault.code}`, fault.data)}
        </p>
      )}
      <p role="status" className="strong">
        {quiet}
      </p>
      <FileButton main label={say('tables.choose')} accept={accepted} onFile={taking.read} />
    </>
  );
}

function Reading({ taking, state }: StepProps<At<'reading'>>) {
  const { say } = useSpeech();
  const step = tableStages.indexOf(state.stage) + 1;
  return (
    <>
      <progress className="progress" aria-label={say('tables.in')} value={step - 0.5} max={tableStages.length} />
      <p role="status">
        {say('tables.stage.step', { step, of: tableStages.length })} · {say(`tables.stage.${state.stage}`)}
      </p>
      <button type="button" className="button" onClick={taking.stop}>
        {say('tables.stop')}
      </button>
    </>
  );
}

function Found({ taking, state, kind }: StepProps<At<'found'>>) {
  const { say } = useSpeech();
  const { found, refused } = state;
  const { count } = found.reading;
  return (
    <>
      <FoundRows found={found} kind={kind} />
      {refused === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {refused}
        </p>
      )}
      {count === 0 ? null : (
        <button type="button" className="button main-action" onClick={() => taking.take(found)}>
          {say('tables.take', { count })}
        </button>
      )}
      <FileButton label={say('tables.choose.other')} accept={accepted} onFile={taking.read} />
    </>
  );
}

/** Row by row; after the last all of them are made lasting at once, and there is nothing left to stop. */
function Writing({ taking, state }: StepProps<At<'saving'> | At<'undoing'>>) {
  const { say } = useSpeech();
  const isSaving = state.at === 'saving';
  const said = say(isSaving ? 'tables.taking' : 'tables.undoing');
  return (
    <>
      <progress className="progress" aria-label={said} value={state.share} max={1} />
      <p role="status" className="strong">
        {said}
      </p>
      {isSaving && state.share < 1 ? (
        <button type="button" className="button" onClick={taking.stopSaving}>
          {say('tables.stop')}
        </button>
      ) : null}
    </>
  );
}

function Taken({ taking, state, kind }: StepProps<At<'taken'>>) {
  const { say } = useSpeech();
  const { found, ids, refused } = state;
  const { added, changed } = found.reading;
  return (
    <>
      <div role="status" className="written">
        <p className="strong">{say('tables.taken', { added: added.length, changed: changed.length })}</p>
        <button type="button" className="button" onClick={() => taking.undo(found, ids)}>
          {say('stores.undo')}
        </button>
      </div>
      {refused === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {refused}
        </p>
      )}
      <Link href={listAddress(kind)} className="button">
        {say(`stores.kind.${kind}`)}
      </Link>
      <FileButton label={say('tables.choose.other')} accept={accepted} onFile={taking.read} />
    </>
  );
}
