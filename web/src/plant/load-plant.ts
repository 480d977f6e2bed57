import type { Plant } from '@loopwright/plant';
import { type AnyEvent, fold } from '@loopwright/records';
import type { FileProblem } from '@loopwright/words';

/** Why a plant could not be read; each has a sentence that says what to do next. */
export type PlantFault =
  | { readonly kind: 'no-answer' | 'not-readable'; readonly reason: string }
  | { readonly kind: 'mistakes'; readonly problems: readonly FileProblem[] };

export type PlantResult =
  | { readonly status: 'reading' }
  | { readonly status: 'ready'; readonly plant: Plant }
  | { readonly status: 'failed'; readonly fault: PlantFault };

const address = '/plant/events.json';

/** Reads the plant's events from the server this page came from and folds them into the plant's state. */
export async function loadPlant(signal: AbortSignal): Promise<PlantResult> {
  const response = await fetch(address, { signal, cache: 'no-cache' }).catch(reasonOf);
  if (typeof response === 'string') return failed({ kind: 'no-answer', reason: response });
  try {
    const answer: unknown = await response.json();
    if (hasList(answer, 'events')) return { status: 'ready', plant: fold(answer.events.filter(isEvent)) };
    if (hasList(answer, 'problems')) {
      return failed({ kind: 'mistakes', problems: answer.problems.filter(isFileProblem) });
    }
    return failed({ kind: 'not-readable', reason: `${response.status} ${response.statusText}` });
  } catch (problem) {
    return failed({ kind: 'not-readable', reason: reasonOf(problem) });
  }
}

function failed(fault: PlantFault): PlantResult {
  return { status: 'failed', fault };
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

function hasList<N extends string>(answer: unknown, name: N): answer is Readonly<Record<N, readonly unknown[]>> {
  return isObject(answer) && Array.isArray((answer as Readonly<Record<string, unknown>>)[name]);
}

function isEvent(value: unknown): value is AnyEvent {
  return isObject(value) && 'type' in value && typeof value.type === 'string' && 'body' in value;
}

function isFileProblem(value: unknown): value is FileProblem {
  return (
    isObject(value) &&
    'file' in value &&
    typeof value.file === 'string' &&
    'code' in value &&
    typeof value.code === 'string' &&
    'data' in value &&
    isObject(value.data)
  );
}

function reasonOf(problem: unknown): string {
  return problem instanceof Error ? problem.message : String(problem);
}
