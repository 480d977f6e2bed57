import { folderLimits, type Plant } from '@loopwright/plant';
import { definitions } from '@loopwright/records';
import { useEffect, useRef, useState } from 'react';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { PlantStore } from '../../../store/plant-store.ts';
import { keep, takeBack } from '../keep.ts';
import { askWorker } from './ask-worker.ts';
import type { FileFault } from './file-fault.ts';
import { definitionsIn, type TableReading, type TableStage } from './table-ask.ts';
import type { TableKind } from './table-kinds.ts';

/** A table that was read, and the plant it was held against. */
export interface FoundTable {
  readonly file: File;
  readonly reading: TableReading;
  readonly plant: Plant;
  /** True where the plant changed after the table was first looked at. */
  readonly overtaken: boolean;
}

export type TakeState =
  | { readonly at: 'start'; readonly fault?: FileFault; readonly stopped?: true }
  | { readonly at: 'reading'; readonly stage: TableStage }
  | { readonly at: 'found'; readonly found: FoundTable; readonly refused?: string }
  | { readonly at: 'saving'; readonly found: FoundTable; readonly share: number }
  | { readonly at: 'taken'; readonly found: FoundTable; readonly ids: readonly string[]; readonly refused?: string }
  | { readonly at: 'undoing'; readonly found: FoundTable; readonly share: number }
  | { readonly at: 'undone' };

export interface TakeTable {
  readonly state: TakeState;
  read(file: File): void;
  stop(): void;
  stopSaving(): void;
  take(found: FoundTable): void;
  undo(found: FoundTable, ids: readonly string[]): void;
}

/** The way of a table from a file into the plant: read, looked at, taken whole or not at all. */
export function useTakeTable(store: PlantStore, kind: TableKind): TakeTable {
  const speech = useSpeech();
  const [state, setState] = useState<TakeState>({ at: 'start' });
  const order = useRef(new AbortController());
  /** Apart from the reading: whoever leaves the page has said that the rows are to be taken. */
  const saving = useRef(new AbortController());
  useEffect(() => () => order.current.abort(), []);

  const read = async (file: File, overtaken = false) => {
    order.current.abort();
    order.current = new AbortController();
    const { signal } = order.current;
    setState({ at: 'reading', stage: 'opening' });
    const { plant } = store.current();
    const onStage = (stage: TableStage) => signal.aborted || setState({ at: 'reading', stage });
    const result = await readingOf(file, { kind, plant, signal, onStage });
    if (signal.aborted) return;
    if ('reading' in result) setState({ at: 'found', found: { file, plant, overtaken, ...result } });
    else setState({ at: 'start', fault: result.fault });
  };
  const take = async (found: FoundTable) => {
    if (store.current().plant !== found.plant) return read(found.file, true);
    saving.current = new AbortController();
    const { signal } = saving.current;
    const onShare = (share: number) => setState({ at: 'saving', found, share });
    onShare(0);
    const outcome = await keep(store, speech, definitions(definitionsIn(found.reading)), { signal, onShare });
    if ('refused' in outcome && signal.aborted) setState({ at: 'start', stopped: true });
    else if ('refused' in outcome) setState({ at: 'found', found, refused: outcome.refused });
    else setState({ at: 'taken', found, ids: outcome.saved.events.map(({ id }) => id) });
  };
  const undo = async (found: FoundTable, ids: readonly string[]) => {
    const onShare = (share: number) => setState({ at: 'undoing', found, share });
    onShare(0);
    const outcome = await takeBack(store, speech, ids, { onShare });
    setState('refused' in outcome ? { at: 'taken', found, ids, refused: outcome.refused } : { at: 'undone' });
  };
  return {
    state,
    read: (file) => void read(file),
    stop: () => {
      order.current.abort();
      setState({ at: 'start', stopped: true });
    },
    stopSaving: () => saving.current.abort(),
    take: (found) => void take(found),
    undo: (found, ids) => void undo(found, ids),
  };
}

interface ReadingAsk {
  readonly kind: TableKind;
  readonly plant: Plant;
  readonly signal: AbortSignal;
  readonly onStage: (stage: TableStage) => void;
}

type ReadingResult = { readonly reading: TableReading } | { readonly fault: FileFault };

async function readingOf(file: File, { kind, plant, signal, onStage }: ReadingAsk): Promise<ReadingResult> {
  const failed = { fault: { code: 'failed', data: {} } } as const;
  const { fileSize_bytes: most } = folderLimits;
  if (file.size > most) {
    return { fault: { code: 'too-large', data: { value: Math.ceil(file.size / 1e6), max: most / 1e6 } } };
  }
  try {
    const bytes = await file.arrayBuffer();
    const answer = await askWorker({ do: 'read', kind, plant, file: file.name, bytes }, { signal, onStage });
    if (answer?.is === 'read') return { reading: answer.reading };
    return answer?.is === 'refused' ? { fault: answer.fault } : failed;
  } catch {
    return failed;
  }
}
