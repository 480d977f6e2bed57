import type { Plant } from '@loopwright/plant';
import { type ReactNode, useMemo, useRef, useState } from 'react';
import { useBusy } from '../offline/busy.ts';
import { Mark } from '../page/mark.tsx';
import { useSpeech } from '../speech/use-speech.tsx';
import type { PlainThing } from './entries.ts';
import { FindingsList } from './findings-list.tsx';
import { FormEnd } from './form-end.tsx';
import { formGroups, hasSources } from './form-field.ts';
import { FieldRows, FormFields, problemsIn, saysOwnSources } from './form-fields.tsx';
import type { StoreKind } from './thing-layout.ts';
import { useForm } from './use-form.ts';
import { type SaveOutcome, useSave } from './use-save.ts';

interface ThingFormProps {
  readonly plant: Plant;
  readonly kind: StoreKind;
  /** The thing to change; undefined for a new one. */
  readonly id: string | undefined;
  /** What stands in the form of a new thing; the same object as long as it stays the same. */
  readonly proposed: PlainThing;
  /** Writes the thing down: `saved` once it is kept, else the sentence that says why not. */
  readonly onSave: (thing: PlainThing) => Promise<SaveOutcome>;
  /** After the draft is thrown away. */
  readonly onDiscard: () => void;
}

/** The form of one thing, whatever its kind: its fields come from its schema, their order from the layout. */
export function ThingForm({ plant, kind, id, proposed, onSave, onDiscard }: ThingFormProps) {
  const { say } = useSpeech();
  const form = useForm(plant, kind, id, proposed);
  useBusy(form.changed);
  const groups = useMemo(() => formGroups(kind), [kind]);
  const [ownSources, setOwnSources] = useState(() => saysOwnSources(form.original));
  const place = useRef<HTMLFormElement>(null);
  const { tried, saving, refused, submit } = useSave(form, place, onSave);
  const shared = { plant, kind, form, tried, ownSources };
  const more = groups.more.flatMap(({ fields }) => fields);
  // A note on a badge would soon be a name, and the records keep everything.
  const note = kind === 'badges' ? [] : form.fields.filter(({ name }) => name === 'note');
  return (
    <form ref={place} className="thing-form" onSubmit={submit} noValidate>
      {form.overtaken ? <p className="caution caution-care">{say('stores.overtaken')}</p> : null}
      <FormFields {...shared} groups={groups.first} />
      {hasSources(form.fields) ? <OwnSources chosen={ownSources} onChoose={setOwnSources} /> : null}
      {more.length === 0 ? null : (
        <More wrong={tried && problemsIn(form, more) > 0}>
          <FormFields {...shared} groups={groups.more} />
        </More>
      )}
      {note.length === 0 ? null : (
        <section className="part">
          <FieldRows {...shared} fields={note} />
        </section>
      )}
      <FindingsList findings={form.findings} />
      <FormEnd
        form={form}
        isNew={id === undefined}
        tried={tried}
        saving={saving}
        refused={refused}
        onDiscard={() => {
          form.discard();
          onDiscard();
        }}
      />
    </form>
  );
}

/** One answer for the whole form: whether numbers come from different sources. */
function OwnSources({ chosen, onChoose }: { readonly chosen: boolean; readonly onChoose: (own: boolean) => void }) {
  const { say } = useSpeech();
  return (
    <button type="button" className="button" aria-pressed={chosen} onClick={() => onChoose(!chosen)}>
      {say(chosen ? 'stores.sources.one' : 'stores.sources.each')}
    </button>
  );
}

/** What need not be said at first. It opens by itself when something in it is wrong. */
function More({ wrong, children }: { readonly wrong: boolean; readonly children: ReactNode }) {
  const { say } = useSpeech();
  const [opened, setOpened] = useState(false);
  const open = opened || wrong;
  return (
    <>
      <button type="button" className="button more-button" aria-expanded={open} onClick={() => setOpened(!open)}>
        <Mark name="down" />
        {say('stores.more')}
      </button>
      {open ? children : null}
    </>
  );
}
