import type { Line, Plant } from '@loopwright/plant';
import { Link } from 'wouter';
import { BadgeShape } from '../../form/badge-shape.tsx';
import type { PlainThing } from '../../form/entries.ts';
import type { StoreKind } from '../../form/thing-layout.ts';
import { titleOf } from '../../form/thing-title.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { PlantStore } from '../../store/plant-store.ts';
import { cardAddress } from '../card/card-address.ts';
import { lineLabelsAddress, positionLabelAddress } from '../labels/labels-address.ts';
import { recipeAddress, trialAddress } from '../recipes/recipes-address.ts';
import { BadgeWearer } from './badge-wearer-later.tsx';
import { CheckDue } from './check-due.tsx';
import type { Written } from './keep.ts';
import { isMeasured, knownGeometry } from './line/geometry.ts';
import { RemoveThing } from './remove-thing.tsx';
import { editAddress, geometryAddress, manyAddress } from './store-address.ts';
import { ThingFacts } from './thing-facts.tsx';
import { ThingHistory } from './thing-history.tsx';
import { UsedBy } from './used-by.tsx';
import { WrittenNote } from './written-note.tsx';

interface ThingViewProps {
  readonly store: PlantStore;
  readonly state: { readonly plant: Plant; readonly size: number };
  readonly kind: StoreKind;
  readonly id: string;
  readonly now: string;
  readonly written: Written | undefined;
  readonly onWritten: (written: Written) => void;
}

/** One thing: what is known of it and from where, what uses it, and how it came to be so. */
export function ThingView(props: ThingViewProps) {
  const { say } = useSpeech();
  const { state, kind, id } = props;
  const thing: PlainThing | undefined = state.plant[kind][id];
  const { plant } = state;
  return (
    <article className="thing">
      <header className="thing-head">
        <p className="soft">{say(`stores.one.${kind}`)}</p>
        <h1 tabIndex={-1} className="thing-title">
          {kind === 'badges' && thing !== undefined ? <BadgeShape shape={String(thing['shape'])} /> : null}
          <bdi>{thing === undefined ? id : titleOf(kind, thing)}</bdi>
        </h1>
        {thing === undefined ? <p>{say('stores.gone', { id })}</p> : null}
      </header>
      <WrittenNote {...props} />
      {thing === undefined ? null : <ThereThing {...props} plant={plant} thing={thing} />}
      {kind === 'badges' && thing !== undefined ? <BadgeWearer badge={id} /> : null}
      <ThingHistory {...props} size={state.size} />
      {thing === undefined ? null : <RemoveThing {...props} plant={plant} />}
      {thing === undefined ? null : (
        <div className="list-action">
          <Link href={editAddress(kind, id)} className="button main-action">
            {say('stores.change', { id })}
          </Link>
        </div>
      )}
    </article>
  );
}

function ThereThing({
  plant,
  kind,
  id,
  thing,
  now,
}: ThingViewProps & { readonly plant: Plant; readonly thing: PlainThing }) {
  const { say } = useSpeech();
  const press = kind === 'presses' ? plant.presses[id] : undefined;
  const line = kind === 'lines' ? plant.lines[id] : undefined;
  return (
    <>
      {press === undefined ? null : <CheckDue press={press} now={now} />}
      {kind === 'positions' ? (
        <Link href={cardAddress(id)} className="button">
          {say('card.title')}
        </Link>
      ) : null}
      {kind === 'positions' ? (
        <Link href={positionLabelAddress(id)} className="button">
          {say('labels.print-one')}
        </Link>
      ) : null}
      <CycleLink kind={kind} id={id} />
      <ThingFacts kind={kind} thing={thing} />
      {line === undefined ? null : <LineParts plant={plant} line={line} />}
      <UsedBy plant={plant} kind={kind} id={id} />
    </>
  );
}

/** The way from what a press cycle is made of to the cycle. */
function CycleLink({ kind, id }: Pick<ThingViewProps, 'kind' | 'id'>) {
  const { say } = useSpeech();
  const trials = { belts: 'belt', presses: 'press', positions: 'position' } as const;
  const isTried = (each: StoreKind): each is keyof typeof trials => Object.hasOwn(trials, each);
  const href = kind === 'recipes' ? recipeAddress(id) : isTried(kind) ? trialAddress(trials[kind], id) : undefined;
  return href === undefined ? null : (
    <Link href={href} className="button">
      {say('recipes.open-cycle')}
    </Link>
  );
}

/** What belongs to a line: how its belt runs, and its positions. */
function LineParts({ plant, line }: { readonly plant: Plant; readonly line: Line }) {
  const { say } = useSpeech();
  const measured = isMeasured(knownGeometry(plant, line));
  return (
    <section className="part line-parts">
      <h2>{say('geometry.part')}</h2>
      {measured ? null : <p>{say('geometry.none')}</p>}
      <Link href={geometryAddress(line.id)} className="button">
        {say(measured ? 'geometry.change' : 'geometry.open')}
      </Link>
      <Link href={manyAddress(line.id)} className="button">
        {say('stores.many.open')}
      </Link>
      <Link href={lineLabelsAddress(line.id)} className="button">
        {say('labels.print-line')}
      </Link>
    </section>
  );
}
