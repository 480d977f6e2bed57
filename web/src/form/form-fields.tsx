import type { Plant } from '@loopwright/plant';
import { useSpeech } from '../speech/use-speech.tsx';
import type { PlainThing } from './entries.ts';
import { FieldRow } from './field-row.tsx';
import { type FormField, type FormGroup, hasSources } from './form-field.ts';
import type { StoreKind } from './thing-layout.ts';
import type { FormState } from './use-form.ts';

interface FormFieldsProps {
  readonly plant: Plant;
  readonly kind: StoreKind;
  readonly form: FormState;
  readonly groups: readonly FormGroup[];
  readonly tried: boolean;
  /** Whether each number may say where it comes from. */
  readonly ownSources: boolean;
}

/** Groups of fields, each under its title. */
export function FormFields({ groups, ...props }: FormFieldsProps) {
  const { say } = useSpeech();
  return groups.map(({ title, fields }) => (
    <section className="part" key={title}>
      <h2>{say(`stores.group.${title}`)}</h2>
      <FieldRows {...props} fields={fields} />
    </section>
  ));
}

type FieldRowsProps = Omit<FormFieldsProps, 'groups'> & { readonly fields: readonly FormField[] };

/** Fields one below the other. The short name of a thing that is there already stays as it is. */
export function FieldRows({ plant, kind, form, fields, tried, ownSources }: FieldRowsProps) {
  const source = sourceNow(form);
  const sourced = hasSources(form.fields);
  return fields
    .filter(({ asked }) => asked !== 'id' || form.original === undefined)
    .filter(({ name }) => name !== 'source' || sourced)
    .map((field) => (
      <FieldRow
        key={field.key}
        plant={plant}
        kind={kind}
        field={field}
        entry={form.entry(field)}
        text={form.text(field)}
        problem={form.reading.problems[field.key]}
        tried={tried}
        source={source}
        ownSources={ownSources}
        onChange={(entry) => form.change(field, entry)}
      />
    ));
}

function sourceNow(form: FormState): string {
  const field = form.fields.find(({ key }) => key === 'source');
  return field === undefined ? '' : form.text(field);
}

/** How many of the fields are wrong or still missing. */
export function problemsIn(form: FormState, fields: readonly FormField[]): number {
  return fields.filter(({ key }) => form.reading.problems[key] !== undefined).length;
}

/** Whether any number of a thing already says where it comes from. */
export function saysOwnSources(thing: PlainThing | undefined): boolean {
  const own = thing?.['sources'];
  return typeof own === 'object' && own !== null && Object.keys(own).length > 0;
}
