import { sourceOf } from '@loopwright/plant';
import { useMemo } from 'react';
import type { PlainThing } from '../../form/entries.ts';
import { choiceWord, fieldLabel } from '../../form/field-words.ts';
import {
  type FormField,
  type FormGroup,
  formFields,
  formGroups,
  hasSource,
  hasSources,
} from '../../form/form-field.ts';
import type { StoreKind } from '../../form/thing-layout.ts';
import { valueText } from '../../form/value-text.ts';
import { useSpeech } from '../../speech/use-speech.tsx';

interface ThingFactsProps {
  readonly kind: StoreKind;
  readonly thing: PlainThing;
}

/** Everything known of a thing, each number with where it comes from. What nobody said is left out. */
export function ThingFacts({ kind, thing }: ThingFactsProps) {
  const { say } = useSpeech();
  const groups = useMemo(() => merged(formGroups(kind)), [kind]);
  const sourced = useMemo(() => hasSources(formFields(kind)), [kind]);
  const note = thing['note'];
  return (
    <>
      {groups.map(({ title, fields }) => (
        <Facts
          key={title}
          title={say(`stores.group.${title}`)}
          kind={kind}
          thing={thing}
          fields={fields.filter(({ name }) => name !== 'source' || sourced)}
        />
      ))}
      {typeof note === 'string' && note !== '' ? (
        <section className="part">
          <h2>{say('field.any.note')}</h2>
          <p>
            <bdi>{note}</bdi>
          </p>
        </section>
      ) : null}
    </>
  );
}

/** Groups of one title, asked at first or later, read as one. */
function merged({ first, more }: ReturnType<typeof formGroups>): readonly FormGroup[] {
  const all = [...first, ...more];
  const titles = [...new Set(all.map(({ title }) => title))];
  return titles.map((title) => ({
    title,
    fields: all.filter((group) => group.title === title).flatMap(({ fields }) => fields),
  }));
}

interface FactsProps extends ThingFactsProps {
  readonly title: string;
  readonly fields: readonly FormField[];
}

function Facts({ title, kind, thing, fields }: FactsProps) {
  const speech = useSpeech();
  const shown = fields.filter(({ asked, key }) => asked !== 'id' && thing[key] !== undefined && thing[key] !== '');
  if (shown.length === 0) return null;
  return (
    <section className="part">
      <h2>{title}</h2>
      <dl className="rows">
        {shown.map((field) => (
          <div className="row" key={field.key}>
            <dt>{fieldLabel(speech, kind, field.name)}</dt>
            <dd className="row-value row-text">
              <bdi>{valueText(speech, kind, field, thing[field.key])}</bdi>
            </dd>
            {hasSource(field) ? (
              <dd className="row-more caption">{choiceWord(speech, 'source', fieldSource(thing, field))}</dd>
            ) : null}
          </div>
        ))}
      </dl>
    </section>
  );
}

function fieldSource(thing: PlainThing, { key }: FormField): string {
  return sourceOf(thing as unknown as Parameters<typeof sourceOf>[0], key);
}
