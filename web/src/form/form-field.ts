import { type Field, fieldsOf, type Kind, references, thingSchemas } from '@loopwright/plant';
import { type FieldGroup, type GroupName, type StoreKind, thingLayouts } from './thing-layout.ts';

/** How a field is asked for. */
export type AskedAs = 'id' | 'number' | 'text' | 'choice' | 'yes-no' | 'day' | 'moment' | 'reference';

/** One field of a thing as a form asks for it. */
export interface FormField extends Field {
  readonly asked: AskedAs;
  /** The kind of thing it names. */
  readonly to?: Kind;
}

export interface FormGroup {
  readonly title: GroupName;
  readonly fields: readonly FormField[];
}

export interface FormGroups {
  readonly first: readonly FormGroup[];
  readonly more: readonly FormGroup[];
}

const known = new Map<Kind, readonly FormField[]>();

/** The fields of a kind of thing, from its schema. Read out once: a list asks for them in every row. */
export function formFields(kind: Kind): readonly FormField[] {
  const before = known.get(kind);
  if (before !== undefined) return before;
  const fields = readFields(kind);
  known.set(kind, fields);
  return fields;
}

function readFields(kind: Kind): readonly FormField[] {
  return fieldsOf(thingSchemas[kind]).map((field) => {
    const to = references.find((reference) => reference.kind === kind && reference.field === field.key)?.to;
    return { ...field, asked: askedAs(field, to !== undefined), ...(to === undefined ? {} : { to }) };
  });
}

function askedAs({ form, textForm, allowed }: Field, refers: boolean): AskedAs {
  if (allowed !== undefined) return 'choice';
  if (form !== 'text') return form;
  return refers ? 'reference' : (textForm ?? 'text');
}

/** The fields of a kind in the order of its layout; those that the layout leaves out come last. */
export function formGroups(kind: StoreKind): FormGroups {
  const fields = formFields(kind);
  const { first, more } = thingLayouts[kind];
  const named = new Set([...first, ...more].flatMap((group) => group.fields));
  // The note stands at the end of every form, in no group.
  const left = fields.map(({ name }) => name).filter((name) => !named.has(name) && name !== 'note');
  const rest: readonly FieldGroup[] = left.length === 0 ? [] : [{ title: 'what', fields: left }];
  const found = (group: FieldGroup): FormGroup => ({
    title: group.title,
    fields: group.fields.flatMap((name) => fields.find((field) => field.name === name) ?? []),
  });
  return { first: first.map(found), more: [...more, ...rest].map(found) };
}

/** Whether a kind has numbers whose source matters; a badge has none. */
export function hasSources(fields: readonly FormField[]): boolean {
  return fields.some(hasSource);
}

/** Whether a field says where its value comes from: numbers and days do, names and answers do not. */
export function hasSource({ asked, name }: FormField): boolean {
  return (asked === 'number' && name !== 'revision') || asked === 'day';
}
