import type { Line, Plant } from '@loopwright/plant';
import { useState } from 'react';
import { Link } from 'wouter';
import { ChoiceGroup } from '../../../settings/choice-group.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { PlantStore } from '../../../store/plant-store.ts';
import { keep } from '../keep.ts';
import { newAddress } from '../store-address.ts';
import { CoordinateEditor } from './coordinate-editor.tsx';
import type { Way } from './geometry.ts';
import type { EditorProps } from './geometry-end.tsx';
import { SurveyEditor } from './survey-editor.tsx';
import { useGeometry } from './use-geometry.ts';
import { WrittenGeometry } from './written-geometry.tsx';

interface LineGeometryProps {
  readonly store: PlantStore;
  readonly plant: Plant;
  readonly line: Line;
  /** What the main action says; default: save. */
  readonly action?: string;
  /** After everything is on the disk; absent: stay and say so. */
  readonly onSaved?: () => void;
}

/** How the belt of one line runs: measured with a tape, or from coordinates; drawn and computed as one types. */
export function LineGeometry({ store, plant, line, action, onSaved }: LineGeometryProps) {
  const speech = useSpeech();
  const { say } = speech;
  const state = useGeometry(plant, line);
  const [written, setWritten] = useState<readonly string[]>();
  const [refused, setRefused] = useState<string>();
  const save = async () => {
    const changes = state.changesNow();
    if (changes === undefined) return;
    const outcome = await keep(store, speech, changes);
    setRefused('refused' in outcome ? outcome.refused : undefined);
    if ('refused' in outcome) return;
    state.discard();
    setWritten(outcome.saved.events.map(({ id }) => id));
    onSaved?.();
  };
  if (plant.belts[line.belt] === undefined) return <NoBelt belt={line.belt} />;
  const { way } = state.geometry;
  const editor: EditorProps = {
    plant,
    state,
    refused,
    head: <Head state={state} />,
    action: action ?? say('stores.save'),
    onSave: save,
  };
  return (
    <div className="geometry">
      <WrittenGeometry
        store={store}
        line={line.id}
        events={written}
        onUndone={() => setWritten([])}
        onRefused={setRefused}
      />
      {state.overtaken ? <p className="caution caution-care">{say('stores.overtaken')}</p> : null}
      {way === 'survey' ? <SurveyEditor {...editor} /> : <CoordinateEditor {...editor} />}
    </div>
  );
}

/** What to beware of before anything is measured, and how one knows where the pulleys are. */
function Head({ state }: Pick<EditorProps, 'state'>) {
  const { say } = useSpeech();
  return (
    <>
      <p className="caution caution-note geometry-lock">{say('geometry.lock-out')}</p>
      <WayChoice way={state.geometry.way} onChoose={state.chooseWay} />
      <WayNote state={state} />
    </>
  );
}

function WayChoice({ way, onChoose }: { readonly way: Way; readonly onChoose: (way: Way) => void }) {
  const { say } = useSpeech();
  return (
    <ChoiceGroup
      title={say('geometry.way')}
      options={(['survey', 'coordinates'] as const).map((value) => ({ value, shown: say(`geometry.way.${value}`) }))}
      chosen={way}
      onChoose={onChoose}
    />
  );
}

/** What becomes of the other way when this one is saved. */
function WayNote({ state }: Pick<EditorProps, 'state'>) {
  const { say } = useSpeech();
  const { known, geometry } = state;
  if (geometry.way === 'coordinates' && known.survey !== undefined) {
    return <p className="soft">{say('geometry.survey-waits')}</p>;
  }
  if (geometry.way === 'survey' && known.pulleys.length > 0) {
    return <p className="soft">{say('geometry.pulleys-go')}</p>;
  }
  return null;
}

function NoBelt({ belt }: { readonly belt: string }) {
  const { say } = useSpeech();
  return (
    <div className="said">
      <p>{say('geometry.no-belt', { belt })}</p>
      <Link href={newAddress('belts')} className="button">
        {say('stores.new.belts')}
      </Link>
    </div>
  );
}
