import type { RunAction } from '@loopwright/jobs/press-run';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useSettings } from '../../settings/use-settings.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { LanguageTiles } from './language-tiles.tsx';
import { useRunShown } from './run-context.tsx';
import { type Tile, Tiles } from './tiles.tsx';

/** Ways out of the straight line, what was tapped last, and the settings that matter in a run. */
export function MorePanel() {
  const { say } = useSpeech();
  const { state, view, words, show, write } = useRunShown();
  const { settings, change } = useSettings();
  const [, goTo] = useLocation();
  const [speaking, setSpeaking] = useState(false);
  const back = () => show({ name: 'step' });
  if (speaking) return <LanguageTiles onBack={() => setSpeaking(false)} />;
  const writes = (changes: RunAction['changes']) => () => {
    void write(changes ?? []).then((kept) => kept && back());
  };
  const tileOf = (action: RunAction): Tile => {
    const { code, choices, changes, placement } = action;
    const opens = code === 'read-display' ? ({ name: 'reading' } as const) : ({ name: 'choices', code } as const);
    const isWritten = choices === undefined && changes !== undefined;
    return {
      key: code,
      shown: words.action(code),
      held: isWritten && placement.hold_s === 1,
      onTap: isWritten ? writes(changes) : () => show(opens),
    };
  };
  const tiles: readonly Tile[] = [
    ...view.others.filter(({ code }) => code !== 'stop').map(tileOf),
    ...(view.takeBack ? [tileOf(view.takeBack)] : []),
    ...(state.settled.heat
      ? [{ key: 'logger', shown: say('runs.logger'), onTap: () => show({ name: 'logger' }) }]
      : []),
    { key: 'all-steps', shown: say('runs.all-steps'), onTap: () => show({ name: 'all-steps' }) },
    { key: 'who', shown: say('who.nobody'), onTap: () => show({ name: 'who' }) },
    {
      key: 'pace',
      shown: say(settings.pace === 'groups' ? 'runs.pace.to-steps' : 'runs.pace.to-groups'),
      onTap: () => {
        change({ pace: settings.pace === 'groups' ? 'steps' : 'groups' });
        back();
      },
    },
    { key: 'speech', shown: say('runs.speech'), onTap: () => setSpeaking(true) },
    { key: 'leave', shown: say('runs.leave'), onTap: () => goTo('/') },
    ...view.others.filter(({ code }) => code === 'stop').map(tileOf),
  ];
  return <Tiles title={say('runs.more')} tiles={tiles} onBack={back} />;
}
