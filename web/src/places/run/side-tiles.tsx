import type { RunAction } from '@loopwright/jobs/press-run';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { trySound } from './alarm-sound.ts';
import { HoldButton } from './hold-button.tsx';
import { type RunPanel, useRunShown } from './run-context.tsx';

/** What else belongs to this step: what is read, the sound, the photos, the displays, another answer. */
export function SideTiles({ action }: { readonly action: RunAction | undefined }) {
  const { say } = useSpeech();
  const { view, words, write, saving } = useRunShown();
  const steps = action?.steps ?? [];
  const measures = (action?.measures ?? []).map(({ measure }) => measure);
  const heatAnyway = action === undefined ? view.others.find(({ code }) => code === 'heat-on')?.changes : undefined;
  const isSealed = action?.code === 'dry' && action.changes !== undefined;
  const photos = steps.includes('faces');
  const verdict = steps.includes('verdict');
  const sound = steps.includes('alarm-tried');
  const reading = view.reading !== undefined;
  const none = ![measures.length > 0, photos, verdict, sound, reading, isSealed, heatAnyway].some(Boolean);
  return (
    <>
      {measures.length === 0 ? null : (
        <OpenTile panel={{ name: 'readings', measures }}>{say('runs.readings', { count: measures.length })}</OpenTile>
      )}
      {sound ? <SoundTile /> : null}
      {photos ? <OpenTile panel={{ name: 'photos' }}>{say('runs.photos')}</OpenTile> : null}
      {verdict ? <OpenTile panel={{ name: 'look' }}>{say('runs.look')}</OpenTile> : null}
      {reading ? <OpenTile panel={{ name: 'reading' }}>{words.action('read-display')}</OpenTile> : null}
      {isSealed ? (
        <OpenTile panel={{ name: 'choices', code: 'dry', step: 'dry' }}>{say('runs.other-answer')}</OpenTile>
      ) : null}
      {heatAnyway === undefined ? null : (
        <HoldButton note={words.line('hold')} disabled={saving} onHeld={() => void write(heatAnyway)}>
          {words.action('heat-on')}
        </HoldButton>
      )}
      {none ? <OpenTile panel={{ name: 'all-steps' }}>{say('runs.all-steps')}</OpenTile> : null}
    </>
  );
}

interface OpenTileProps {
  readonly panel: RunPanel;
  readonly children: string;
}

function OpenTile({ panel, children }: OpenTileProps) {
  const { show, saving } = useRunShown();
  return (
    <button type="button" className="button run-tile" disabled={saving} onClick={() => show(panel)}>
      <span>{children}</span>
    </button>
  );
}

/** Lets somebody hear, here, whether the phone can be heard at all. */
function SoundTile() {
  const { say } = useSpeech();
  const [heard, setHeard] = useState<'sounded' | 'silent'>();
  const sound = async () => setHeard((await trySound()) ? 'sounded' : 'silent');
  return (
    <button type="button" className="button run-tile" onClick={() => void sound()}>
      <span>{say('runs.sound')}</span>
      <span className="caption" role="status">
        {heard === undefined ? '' : say(`runs.sound.${heard}`)}
      </span>
    </button>
  );
}
