import { type FormEvent, type RefObject, useEffect, useState } from 'react';
import type { PlainThing } from './entries.ts';
import type { FormState } from './use-form.ts';

/** What came of saving: it is kept, or why it is not. */
export type SaveOutcome = 'saved' | { readonly refused: string };

export interface Saving {
  /** True once somebody has tried to save. */
  readonly tried: boolean;
  readonly saving: boolean;
  /** Why the last attempt was not kept. */
  readonly refused: string | undefined;
  readonly submit: (event: FormEvent) => void;
}

/** Saves a form whole, or goes to the first thing that is wrong with it. The draft goes only once the thing is kept. */
export function useSave(
  form: FormState,
  place: RefObject<HTMLFormElement | null>,
  onSave: (thing: PlainThing) => Promise<SaveOutcome>,
): Saving {
  const [attempts, setAttempts] = useState(0);
  const [saving, setSaving] = useState(false);
  const [refused, setRefused] = useState<string>();
  useEffect(() => {
    if (attempts > 0) goToFirstFault(place.current);
  }, [attempts, place]);
  const save = async (thing: PlainThing) => {
    setSaving(true);
    const outcome = await onSave(thing);
    setSaving(false);
    setRefused(outcome === 'saved' ? undefined : outcome.refused);
    if (outcome === 'saved') form.discard();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (saving) return;
    const { thing } = form.reading;
    if (thing === undefined || form.findingsNow().errors.length > 0) setAttempts(attempts + 1);
    else void save(thing);
  };
  return { tried: attempts > 0, saving, refused, submit };
}

function goToFirstFault(form: HTMLFormElement | null): void {
  const control = form?.querySelector<HTMLElement>('.field:has(.field-wrong) :is(input, select, textarea, a)');
  const found = control ?? form?.querySelector<HTMLElement>('.findings .caution-stop');
  found?.scrollIntoView({ block: 'center' });
  found?.focus({ preventScroll: true });
}
