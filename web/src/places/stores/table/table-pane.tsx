import { useSpeech } from '../../../speech/use-speech.tsx';
import { useStore } from '../../../store/use-store.tsx';
import { arrive } from '../arrive.ts';
import { GiveTable } from './give-table.tsx';
import type { TableKind } from './table-kinds.ts';
import { TakeTable } from './take-table.tsx';

export interface TablePaneProps {
  readonly kind: TableKind;
  readonly now: string;
}

/** Things of one kind as a table: taken in whole or not at all, given out to be taken in again. */
export function TablePane({ kind, now }: TablePaneProps) {
  const { say } = useSpeech();
  const { store, state } = useStore();
  return (
    <article className="thing-form table-pane">
      <h1 tabIndex={-1} ref={arrive} className="thing-title">
        {say('tables.title', { kind: say(`stores.kind.${kind}`) })}
      </h1>
      <TakeTable store={store} kind={kind} />
      <GiveTable plant={state.plant} kind={kind} now={now} />
    </article>
  );
}
