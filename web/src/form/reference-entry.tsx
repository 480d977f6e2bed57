import type { Plant } from '@loopwright/plant';
import { Link } from 'wouter';
import { newAddress } from '../places/stores/store-address.ts';
import { useSpeech } from '../speech/use-speech.tsx';
import { type ControlProps, withoutKept } from './number-entry.tsx';
import { isStoreKind } from './thing-layout.ts';
import { titleOf } from './thing-title.ts';

/** Another thing of the plant, chosen from those there are; none there: the way to enter one. */
export function ReferenceEntry({ plant, ...props }: ControlProps & { readonly plant: Plant }) {
  const { say } = useSpeech();
  const { field, entry, text, id, describedBy, wrong, onChange } = props;
  const { to } = field;
  if (to === undefined || !isStoreKind(to)) return null;
  const things = Object.values(plant[to]);
  const gone = text !== '' && !things.some((thing) => thing.id === text);
  if (things.length === 0 && !gone) {
    return (
      <Link id={id} href={newAddress(to)} className="button">
        {say(`stores.new.${to}`)}
      </Link>
    );
  }
  return (
    <select
      id={id}
      className="entry"
      value={text}
      aria-invalid={wrong}
      aria-describedby={describedBy}
      aria-required={field.required}
      onChange={(event) => onChange({ ...withoutKept(entry), text: event.target.value })}
    >
      <option value="">{say(field.required ? 'stores.choose' : 'stores.any')}</option>
      {gone ? <option value={text}>{text}</option> : null}
      {things.map((thing) => (
        <option key={thing.id} value={thing.id}>
          {titleOf(to, thing)}
        </option>
      ))}
    </select>
  );
}
