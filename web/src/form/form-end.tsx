import { useState } from 'react';
import { useSpeech } from '../speech/use-speech.tsx';
import type { FormState } from './use-form.ts';

interface FormEndProps {
  readonly form: FormState;
  readonly isNew: boolean;
  readonly tried: boolean;
  readonly saving: boolean;
  readonly refused: string | undefined;
  readonly onDiscard: () => void;
}

/** The end of a form: what became of what is typed, and the one main action. Nothing changed, no main action. */
export function FormEnd({ form, isNew, tried, saving, refused, onDiscard }: FormEndProps) {
  const { say } = useSpeech();
  const faults = Object.keys(form.reading.problems).length + form.findings.errors.length;
  return (
    <div className="form-end">
      {refused === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {refused}
        </p>
      )}
      <p className="soft" role="status">
        {draftText(form, say('stores.draft.kept'), say('stores.draft.lost'))}
      </p>
      {tried && faults > 0 ? <p className="strong">{say('stores.faults', { count: faults })}</p> : null}
      {form.changed || isNew ? (
        <button type="submit" className="button main-action" aria-disabled={saving}>
          {say(saving ? 'stores.saving' : 'stores.save')}
        </button>
      ) : null}
      {form.changed ? <Discard onDiscard={onDiscard} /> : <Leave onLeave={onDiscard} />}
    </div>
  );
}

function draftText({ draftKept }: FormState, kept: string, lost: string): string {
  if (draftKept === undefined) return '';
  return draftKept ? kept : lost;
}

function Leave({ onLeave }: { readonly onLeave: () => void }) {
  const { say } = useSpeech();
  return (
    <button type="button" className="button" onClick={onLeave}>
      {say('stores.leave')}
    </button>
  );
}

/** Throwing away what is typed is asked once. */
function Discard({ onDiscard }: { readonly onDiscard: () => void }) {
  const { say } = useSpeech();
  const [asked, setAsked] = useState(false);
  if (!asked) {
    return (
      <button type="button" className="button" onClick={() => setAsked(true)}>
        {say('stores.discard')}
      </button>
    );
  }
  return (
    <fieldset className="ask">
      <legend>{say('stores.discard.ask')}</legend>
      <div className="ask-answers">
        <button type="button" className="button button-stop" onClick={onDiscard}>
          {say('stores.discard.yes')}
        </button>
        <button type="button" className="button" onClick={() => setAsked(false)}>
          {say('stores.discard.no')}
        </button>
      </div>
    </fieldset>
  );
}
