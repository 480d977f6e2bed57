import type { Kind, Plant } from '@loopwright/plant';
import { type Entries, type Entry, type PlainThing, shownText } from '../../../form/entries.ts';
import { FieldRow } from '../../../form/field-row.tsx';
import type { FormField } from '../../../form/form-field.ts';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { Problems } from './read-geometry.ts';

interface EntryRowProps {
  readonly plant: Plant;
  readonly kind: Kind;
  readonly field: FormField;
  readonly entries: Entries;
  /** The thing as the plant knows it. */
  readonly original: PlainThing | undefined;
  readonly problems: Problems;
  readonly tried: boolean;
  /** Where all numbers come from. */
  readonly source: string;
  readonly ownSources?: boolean;
  readonly onChange: (field: string, entry: Entry) => void;
}

const nothing: Entry = { text: '' };

/** A field of the editor: number with its unit and source, as in every form. */
export function EntryRow({ field, entries, original, problems, ownSources = false, onChange, ...row }: EntryRowProps) {
  const writer = useSpeech();
  const entry = entries[field.key] ?? nothing;
  return (
    <FieldRow
      {...row}
      field={field}
      entry={entry}
      text={shownText(field, entry, original, writer)}
      problem={problems[field.key]}
      ownSources={ownSources}
      onChange={(changed) => onChange(field.key, changed)}
    />
  );
}
