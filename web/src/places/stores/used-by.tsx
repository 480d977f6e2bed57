import { type Plant, references } from '@loopwright/plant';
import { Link } from 'wouter';
import { isStoreKind, type StoreKind } from '../../form/thing-layout.ts';
import { titleOf } from '../../form/thing-title.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { thingAddress } from './store-address.ts';

const mostShown = 20;

/** What refers to a thing, kind by kind. */
export function usersOf(plant: Plant, kind: StoreKind, id: string) {
  return references
    .filter(({ to }) => to === kind)
    .map((reference) => ({
      kind: reference.kind,
      things: Object.values(plant[reference.kind]).filter((thing) => Reflect.get(thing, reference.field) === id),
    }))
    .filter(({ things }) => things.length > 0);
}

/** The things that use this one, each a way to it. */
export function UsedBy({ plant, kind, id }: { readonly plant: Plant; readonly kind: StoreKind; readonly id: string }) {
  const { say } = useSpeech();
  return usersOf(plant, kind, id).map(({ kind: user, things }) => {
    if (!isStoreKind(user)) return null;
    const left = things.length - mostShown;
    return (
      <section className="part" key={user}>
        <h2>{say('stores.used-by', { kind: say(`stores.kind.${user}`), count: things.length })}</h2>
        <ul className="tiles">
          {things.slice(0, mostShown).map((thing) => (
            <li key={thing.id}>
              <Link href={thingAddress(user, thing.id)} className="button used-by">
                <bdi>{titleOf(user, thing)}</bdi>
              </Link>
            </li>
          ))}
        </ul>
        {left > 0 ? <p className="soft">{say('stores.used-by.more', { count: left })}</p> : null}
      </section>
    );
  });
}
