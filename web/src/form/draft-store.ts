import type { Entries, PlainThing } from './entries.ts';

/** A form that somebody began and has not saved. */
export interface Draft {
  readonly entries: Entries;
  /** The thing as it stood when the form was opened; absent for a new one. */
  readonly original?: PlainThing;
}

const prefix = 'loopwright.draft.';

/** The name under which a form is kept: one a plant, kind and thing. */
export function draftName(plant: string, kind: string, id: string | undefined): string {
  return `${prefix}${JSON.stringify([plant, kind, id ?? ''])}`;
}

/** The draft kept under a name; nothing when there is none or it cannot be read. */
export function readDraft(name: string): Draft | undefined {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(name) ?? 'null');
    return isDraft(read) ? read : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a draft; false where the browser does not let it be kept. */
export function keepDraft(name: string, draft: Draft): boolean {
  try {
    localStorage.setItem(name, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

export function dropDraft(name: string): void {
  try {
    localStorage.removeItem(name);
  } catch {
    return;
  }
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isDraft(value: unknown): value is Draft {
  if (!isObject(value) || !isObject(value['entries'])) return false;
  const entries = Object.values(value['entries']);
  return entries.every((entry) => isObject(entry) && typeof entry['text'] === 'string');
}
