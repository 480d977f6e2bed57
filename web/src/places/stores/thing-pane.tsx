import type { Line } from '@loopwright/plant';
import { useEffect, useMemo, useRef } from 'react';
import { useLocation } from 'wouter';
import type { PlainThing } from '../../form/entries.ts';
import { ThingForm } from '../../form/thing-form.tsx';
import { type StoreKind, thingLayouts } from '../../form/thing-layout.ts';
import type { SaveOutcome } from '../../form/use-save.ts';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { PlantStore, StoreState } from '../../store/plant-store.ts';
import { Witnesses } from '../witness/witnesses-later.tsx';
import { Everything } from './everything/everything-later.tsx';
import { definitionOf, keep, type Written } from './keep.ts';
import { LineGeometry } from './line/line-geometry-later.tsx';
import { ManyPositions } from './many-positions.tsx';
import { PlantName } from './plant-name.tsx';
import { proposedThing } from './proposed-thing.ts';
import { listAddress, type StoreView, thingAddress } from './store-address.ts';
import { isTableKind } from './table/table-kinds.ts';
import { TablePane } from './table/table-pane-later.tsx';
import { ThingView } from './thing-view.tsx';

export interface ThingPaneProps {
  readonly store: PlantStore;
  readonly state: StoreState;
  readonly view: StoreView;
  readonly kind: StoreKind | undefined;
  readonly now: string;
  /** The last change made here. */
  readonly written: Written | undefined;
  readonly onWritten: (written: Written | undefined) => void;
}

/** The chosen thing, its form, or what to choose. Mounted anew for each address. */
export function ThingPane(props: ThingPaneProps) {
  const { view } = props;
  const place = useRef<HTMLDivElement>(null);
  const isThing = view.view !== 'kinds' && view.view !== 'list';
  useEffect(() => {
    if (isThing) arriveAt(place.current);
  }, [isThing]);
  return (
    <div ref={place}>
      <Chosen {...props} />
    </div>
  );
}

function Chosen(props: ThingPaneProps) {
  const { say } = useSpeech();
  const { view, kind, now } = props;
  if (view.view === 'everything') return <Everything now={now} />;
  if (view.view === 'plant') return <PlantName {...props} />;
  if (view.view === 'witnesses') return <Witnesses />;
  if (kind === undefined || view.view === 'list') {
    return <p className="said">{say(kind === undefined ? 'stores.about' : 'stores.about.list')}</p>;
  }
  if (view.view === 'table' && isTableKind(kind)) return <TablePane kind={kind} now={now} />;
  return <ChosenThing {...props} kind={kind} />;
}

/** Whoever comes to a thing starts at its top, by eye, by keyboard and by ear. */
function arriveAt(place: HTMLElement | null): void {
  window.scrollTo(0, 0);
  place?.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
}

function ChosenThing(props: ThingPaneProps & { readonly kind: StoreKind }) {
  const { view, kind } = props;
  const [, goTo] = useLocation();
  if (view.view === 'thing') return <ThingView {...props} id={view.id} />;
  if (view.view === 'many' && kind === 'positions') return <ManyPositions {...props} line={view.id} />;
  if (view.view === 'geometry') return <GeometryOf {...props} line={props.state.plant.lines[view.id]} id={view.id} />;
  const id = view.view === 'edit' ? view.id : undefined;
  return (
    <EditThing {...props} id={id} onLeave={() => goTo(id === undefined ? listAddress(kind) : thingAddress(kind, id))} />
  );
}

interface GeometryOfProps extends ThingPaneProps {
  readonly line: Line | undefined;
  readonly id: string;
}

function GeometryOf({ store, state, line, id }: GeometryOfProps) {
  const { say } = useSpeech();
  if (line === undefined) return <Said title={say('stores.gone', { id })} next={say('stores.unknown.next')} />;
  return (
    <>
      <h1 tabIndex={-1} className="thing-title">
        {say('geometry.title', { line: line.id })}
      </h1>
      <LineGeometry store={store} plant={state.plant} line={line} />
    </>
  );
}

interface EditThingProps extends ThingPaneProps {
  readonly kind: StoreKind;
  readonly id: string | undefined;
  readonly onLeave: () => void;
}

function EditThing({ store, state, kind, id, onWritten, onLeave }: EditThingProps) {
  const speech = useSpeech();
  const [, goTo] = useLocation();
  const proposed = useMemo(
    () => proposedThing(store.current().plant, kind, thingLayouts[kind].proposed),
    [store, kind],
  );
  const save = async (thing: PlainThing): Promise<SaveOutcome> => {
    const outcome = await keep(store, speech, definitionOf(kind, thing));
    if ('refused' in outcome) return outcome;
    const eventId = outcome.saved.events[0]?.id;
    const newId = String(thing['id']);
    onWritten({ did: 'saved', kind, id: newId, ...(eventId === undefined ? {} : { eventId }) });
    goTo(thingAddress(kind, newId));
    return 'saved';
  };
  const title = id === undefined ? speech.say(`stores.new.${kind}`) : speech.say('stores.change', { id });
  return (
    <>
      <h1 tabIndex={-1} className="thing-title">
        <bdi>{title}</bdi>
      </h1>
      <ThingForm plant={state.plant} kind={kind} id={id} proposed={proposed} onSave={save} onDiscard={onLeave} />
    </>
  );
}
