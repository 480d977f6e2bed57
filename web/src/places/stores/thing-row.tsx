import type { Voice } from '@loopwright/words';
import { Link } from 'wouter';
import { BadgeShape } from '../../form/badge-shape.tsx';
import type { PlainThing } from '../../form/entries.ts';
import { formFields } from '../../form/form-field.ts';
import { type StoreKind, thingLayouts } from '../../form/thing-layout.ts';
import { valueText } from '../../form/value-text.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { moveByArrows } from '../lines/move-focus.ts';
import { thingAddress } from './store-address.ts';

interface ThingRowProps {
  readonly kind: StoreKind;
  readonly thing: PlainThing;
  readonly chosen: boolean;
  readonly withKind: boolean;
}

/** One thing as a target: its short name, and what tells it from the others. */
export function ThingRow({ kind, thing, chosen, withKind }: ThingRowProps) {
  const speech = useSpeech();
  const id = String(thing['id']);
  const facts = [...(withKind ? [speech.say(`stores.one.${kind}`)] : []), ...rowFacts(speech, kind, thing)];
  return (
    <Link
      href={thingAddress(kind, id)}
      className="found-row thing-row"
      aria-current={chosen ? 'page' : undefined}
      onKeyDown={moveByArrows}
    >
      <span className="found-id">
        {kind === 'badges' ? <BadgeShape shape={String(thing['shape'])} /> : null} <bdi>{id}</bdi>
      </span>
      <span className="soft">
        <bdi>{facts.join(' · ')}</bdi>
      </span>
    </Link>
  );
}

function rowFacts(voice: Voice, kind: StoreKind, thing: PlainThing): readonly string[] {
  const fields = formFields(kind);
  return thingLayouts[kind].row.flatMap((name) => {
    const field = fields.find((known) => known.name === name);
    const text = field === undefined ? '' : valueText(voice, kind, field, thing[field.key]);
    return text === '' ? [] : [text];
  });
}
