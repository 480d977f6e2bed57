import type { Plant } from '@loopwright/plant';
import { useMemo, useRef } from 'react';
import type { PlainThing } from '../../form/entries.ts';
import type { Findings } from '../../form/findings.ts';
import { FindingsList } from '../../form/findings-list.tsx';
import { type FormField, formGroups } from '../../form/form-field.ts';
import { FieldRows } from '../../form/form-fields.tsx';
import { useForm } from '../../form/use-form.ts';
import { type SaveOutcome, useSave } from '../../form/use-save.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { PlantStore } from '../../store/plant-store.ts';
import { definitionOf, keep } from '../stores/keep.ts';
import { proposedThing } from '../stores/proposed-thing.ts';

interface ThingStepProps {
  readonly store: PlantStore;
  readonly plant: Plant;
  readonly kind: 'belts' | 'lines';
}

/** What the first card needs of a belt or a line, and no more; the rest is entered in the stores. */
export function ThingStep({ store, plant, kind }: ThingStepProps) {
  const speech = useSpeech();
  const { say } = speech;
  const proposed = useMemo(() => firstThing(store.current().plant, kind), [store, kind]);
  const form = useForm(plant, kind, undefined, proposed);
  const fields = useMemo(() => neededFields(kind, proposed), [kind, proposed]);
  const place = useRef<HTMLFormElement>(null);
  const save = async (thing: PlainThing): Promise<SaveOutcome> => {
    const outcome = await keep(store, speech, definitionOf(kind, thing));
    return 'refused' in outcome ? outcome : 'saved';
  };
  const { tried, saving, refused, submit } = useSave(form, place, save);
  const faults = Object.keys(form.reading.problems).length;
  return (
    <form ref={place} className="thing-form" onSubmit={submit} noValidate>
      <h1 tabIndex={-1}>{say(`start.${kind}`)}</h1>
      <p>{say(`start.help.${kind}`)}</p>
      <FieldRows plant={plant} kind={kind} form={form} fields={fields} tried={tried} ownSources={false} />
      <FindingsList findings={withoutLater(form.findings)} />
      {refused === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {refused}
        </p>
      )}
      {tried && faults > 0 ? <p className="strong">{say('stores.faults', { count: faults })}</p> : null}
      <button type="submit" className="button main-action" aria-disabled={saving}>
        {say(saving ? 'stores.saving' : 'start.next')}
      </button>
    </form>
  );
}

/** What a plant lacks because it comes later on this way; saying so now would only worry. */
const later: ReadonlySet<string> = new Set([
  'line-without-die',
  'line-without-template',
  'line-without-path',
  'take-up-stroke-missing',
]);

function withoutLater({ errors, cares }: Findings): Findings {
  return { errors, cares: cares.filter(({ code }) => !later.has(code)) };
}

/** What stands in the form already: where its numbers come from, and a short name for the line. */
function firstThing(plant: Plant, kind: ThingStepProps['kind']): PlainThing {
  const proposed = proposedThing(plant, kind, undefined);
  return kind === 'lines' ? { ...proposed, id: 'L1', source: 'person' } : proposed;
}

/** The fields without which nothing can be computed, but those that are answered already and that nobody would change. */
function neededFields(kind: ThingStepProps['kind'], proposed: PlainThing): readonly FormField[] {
  const answered = new Set(Object.keys(proposed).filter((key) => key !== 'id'));
  const all = [...formGroups(kind).first, ...formGroups(kind).more].flatMap(({ fields }) => fields);
  return all.filter(({ key, required, byDefault }) => required && byDefault === undefined && !answered.has(key));
}
