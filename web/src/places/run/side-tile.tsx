import type { RunAction } from '@loopwright/jobs/press-run';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { trySound } from './alarm-sound.ts';
import { HoldButton } from './hold-button.tsx';
import { type RunPanel, useRunShown } from './run-context.tsx';

/** What else belongs to this step: the sound, the photos, what is seen, the displays, another answer. */
export function SideTile({ action }: { readonly action: RunAction | undefined }) {
  const { say } = useSpeech();
  const { view, words, show, saving, write } = useRunShown();
  const steps = action?.steps ?? [];
  const heatAnyway = view.others.find(({ code }) => code === 'heat-on');
  const opens = (panel: RunPanel, shown: string) => (
    <button type="button" className="button run-tile" disabled={saving} onClick={() => show(panel)}>
      <span>{shown}</span>
    </button>
  );
  if (steps.includes('alarm-tried')) return <SoundTile />;
  if (steps.includes('faces')) return opens({ name: 'photos' }, say('runs.photos'));
  if (steps.includes('verdict'))
    return opens({ name: 'choices', code: 'verdict', step: 'verdict' }, say('runs.other-answer'));
  if (view.reading !== undefined) return opens({ name: 'reading' }, words.action('read-display'));
  if (action?.code === 'dry' && action.changes)
    return opens({ name: 'choices', code: 'dry', step: 'dry' }, say('runs.other-answer'));
  if (action === undefined && heatAnyway?.changes !== undefined) {
    const { changes } = heatAnyway;
    return (
      <HoldButton note={words.line('hold')} disabled={saving} onHeld={() => void write(changes)}>
        {words.action('heat-on')}
      </HoldButton>
    );
  }
  return opens({ name: 'all-steps' }, say('runs.all-steps'));
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
