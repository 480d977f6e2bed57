import { type ReactNode, useEffect, useRef } from 'react';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { ImportPreview } from '../../../store/plant-store.ts';

interface FoundRecordsProps {
  readonly file: string;
  readonly preview: ImportPreview;
  readonly saving: boolean;
  readonly onTake: () => void;
  readonly onLeave: () => void;
}

/** What an export file holds and what taking it would do. */
export function FoundRecords({ file, preview, saving, onTake, onLeave }: FoundRecordsProps) {
  const { say } = useSpeech();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { relation, stepsBack, nothingNew: isHere, unknownEvents, notWitnessed } = preview;
  return (
    <>
      <h3 tabIndex={-1} ref={heading} className="table-found">
        <bdi>{say('everything.whole', { file })}</bdi>
      </h3>
      <RecordFacts preview={preview} />
      <p className="strong">
        <bdi>
          {isHere
            ? say('store.file-nothing-new')
            : say(`everything.relation.${relation}`, { name: stepsBack?.name ?? '' })}
        </bdi>
      </p>
      {unknownEvents === 0 ? null : <p>{say('everything.unknown', { count: unknownEvents })}</p>}
      {notWitnessed === 0 ? null : <p>{say('everything.not-witnessed', { count: notWitnessed })}</p>}
      <p role="status" className="strong">
        {saving ? say('everything.taking') : ''}
      </p>
      {saving ? null : (
        <>
          {isHere ? null : (
            <button type="button" className="button main-action" onClick={onTake}>
              {say('everything.take')}
            </button>
          )}
          <button type="button" className="button" onClick={onLeave}>
            {say(isHere ? 'stores.leave' : 'everything.no')}
          </button>
        </>
      )}
    </>
  );
}

function RecordFacts({ preview }: { readonly preview: ImportPreview }) {
  const { say } = useSpeech();
  const { plant, events, newEvents, devices, positions, blobs, missingBlobs } = preview;
  const number = (count: number) => say('stores.count', { count });
  return (
    <dl className="table-facts">
      <Fact name={say('everything.plant')} value={<bdi>{plant.name}</bdi>} />
      <Fact name={say('stores.kind.positions')} value={number(positions)} />
      <Fact
        name={say('everything.records')}
        value={say('everything.records.new', { count: number(events), fresh: number(newEvents) })}
      />
      <Fact name={say('everything.devices')} value={number(devices)} />
      <Fact
        name={say('everything.pictures')}
        value={
          missingBlobs === 0
            ? number(blobs)
            : say('everything.pictures.missing', { count: number(blobs), missing: number(missingBlobs) })
        }
      />
    </dl>
  );
}

function Fact({ name, value }: { readonly name: string; readonly value: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}
