import { subjectOf } from '@loopwright/records';
import type { FileProblem } from '@loopwright/words';
import type { Change, SeedOrigin } from '../store/plant-store.ts';

/** Why a plant could not be read; each has a sentence that says what to do next. */
export type PlantFault =
  | { readonly kind: 'no-answer' | 'not-readable'; readonly reason: string }
  | { readonly kind: 'mistakes'; readonly problems: readonly FileProblem[] };

/** What the server says that the plant consists of. */
export type ServerPlant =
  | { readonly status: 'read'; readonly changes: readonly Change[]; readonly origin: SeedOrigin }
  | { readonly status: 'failed'; readonly fault: PlantFault };

const address = '/plant/events.json';

/** Reads the plant's definitions from the server this page came from. */
export async function loadServerPlant(signal: AbortSignal): Promise<ServerPlant> {
  const response = await fetch(address, { signal, cache: 'no-cache' }).catch(reasonOf);
  if (typeof response === 'string') return failed({ kind: 'no-answer', reason: response });
  try {
    const answer: unknown = await response.json();
    if (hasList(answer, 'events')) return { status: 'read', ...contentOf(answer, answer.events.filter(isChange)) };
    if (hasList(answer, 'problems')) {
      return failed({ kind: 'mistakes', problems: answer.problems.filter(isFileProblem) });
    }
    return failed({ kind: 'not-readable', reason: `${response.status} ${response.statusText}` });
  } catch (problem) {
    return failed({ kind: 'not-readable', reason: reasonOf(problem) });
  }
}

function contentOf(answer: object, changes: readonly Change[]) {
  const demo = 'demo' in answer && answer.demo === true;
  return { changes, origin: { plant: plantIdIn(changes), demo } };
}

function plantIdIn(changes: readonly Change[]): string {
  const definition = changes.find((change) => change.type === 'plant.defined');
  return (definition && subjectOf(definition)?.id) ?? 'plant';
}

function failed(fault: PlantFault): ServerPlant {
  return { status: 'failed', fault };
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

function hasList<N extends string>(answer: unknown, name: N): answer is Readonly<Record<N, readonly unknown[]>> {
  return isObject(answer) && Array.isArray((answer as Readonly<Record<string, unknown>>)[name]);
}

function isChange(value: unknown): value is Change {
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
