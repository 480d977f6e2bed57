import { nobody } from '@loopwright/records/run';
import { useEffect, useState } from 'react';
import { BadgeShape } from '../../form/badge-shape.tsx';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { HistoryEntry, PlantStore } from '../../store/plant-store.ts';
import type { Written, WrittenKind } from './keep.ts';
import { thingChanges } from './thing-changes.ts';
import { Undo } from './written-note.tsx';

interface ThingHistoryProps {
  readonly store: PlantStore;
  readonly kind: WrittenKind;
  readonly id: string;
  /** Number of events in the store; another number, another history. */
  readonly size: number;
  readonly onWritten: (written: Written) => void;
}

/** Who changed what and when, the newest first; each change can be taken back. */
export function ThingHistory(props: ThingHistoryProps) {
  const { say } = useSpeech();
  const entries = useHistory(props);
  const [open, setOpen] = useState(false);
  if (entries.length === 0) return null;
  return (
    <section className="part history">
      <h2>{say('stores.history')}</h2>
      <button type="button" className="button more-button" aria-expanded={open} onClick={() => setOpen(!open)}>
        <Mark name="down" />
        {say('stores.history.count', { count: entries.length })}
      </button>
      {open ? (
        <ol className="history-list">
          {entries.toReversed().map((entry, at) => (
            <li key={entry.eventId}>
              <Change {...props} entry={entry} isLast={at === 0} takenBack={byWhom(entries, entry)} />
            </li>
          ))}
        </ol>
      ) : null}
    </section>
  );
}

function useHistory({ store, kind, id, size }: ThingHistoryProps): readonly HistoryEntry[] {
  const [found, setFound] = useState<{ readonly size: number; readonly entries: readonly HistoryEntry[] }>();
  useEffect(() => {
    let wanted = true;
    void store.history(kind, id).then((entries) => {
      if (wanted) setFound({ size, entries });
    });
    return () => {
      wanted = false;
    };
  }, [store, kind, id, size]);
  return found?.entries ?? [];
}

/** The later event that took this one back. */
function byWhom(entries: readonly HistoryEntry[], { eventId }: HistoryEntry): HistoryEntry | undefined {
  return entries.find(({ corrects }) => corrects === eventId);
}

interface ChangeProps extends ThingHistoryProps {
  readonly entry: HistoryEntry;
  readonly isLast: boolean;
  readonly takenBack: HistoryEntry | undefined;
}

function Change({ entry, isLast, takenBack, ...props }: ChangeProps) {
  const speech = useSpeech();
  const { kind } = props;
  // A plant cannot be without a name.
  const isBeginning = kind === 'plant' && entry.before === undefined;
  return (
    <div className="change">
      <p>
        <Who entry={entry} /> <span className="soft">{speech.moment(entry.at)}</span>
      </p>
      <p className="strong">{didWhat(entry, speech.say)}</p>
      <ChangedFields kind={kind} entry={entry} />
      {isBeginning ? null : takenBack === undefined ? (
        <>
          {isLast ? null : <p className="caption">{speech.say('stores.undo.later')}</p>}
          <Undo {...props} eventId={entry.eventId} />
        </>
      ) : (
        <p className="caption">{speech.say('stores.history.taken-back')}</p>
      )}
    </div>
  );
}

function didWhat({ before, after, corrects }: HistoryEntry, say: ReturnType<typeof useSpeech>['say']): string {
  if (corrects !== undefined) return say('stores.history.correction');
  if (after === undefined) return say('stores.history.removed');
  return say(before === undefined ? 'stores.history.entered' : 'stores.history.changed');
}

/** Badge by shape and word; a badge that is gone by the alias it wrote with. */
function Who({ entry }: { readonly entry: HistoryEntry }) {
  const { say } = useSpeech();
  const { badge, by, ownDevice } = entry;
  return (
    <span className="badge-who">
      {badge === undefined ? null : <BadgeShape shape={badge.shape} />}
      <bdi className="strong">{badge?.word ?? (by === nobody ? say('stores.history.nobody') : by)}</bdi>
      {ownDevice ? null : <span className="soft">{say('stores.history.other-device')}</span>}
    </span>
  );
}

function ChangedFields({ kind, entry }: { readonly kind: WrittenKind; readonly entry: HistoryEntry }) {
  const speech = useSpeech();
  const changes = thingChanges(speech, kind, entry.before, entry.after);
  // Of a thing that is gone only that it is gone matters; it stands in the change before.
  if (entry.after === undefined) return null;
  return (
    <ul className="changed-fields">
      {changes.map(({ label, from, to }) => (
        <li key={label}>
          {label}:{' '}
          {entry.before === undefined ? null : (
            <>
              <bdi>{from === '' ? speech.say('stores.history.nothing') : from}</bdi> →{' '}
            </>
          )}
          <bdi className="strong">{to === '' ? speech.say('stores.history.nothing') : to}</bdi>
        </li>
      ))}
    </ul>
  );
}
