import { BadgeShape } from '../../form/badge-shape.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import { useRunShown } from './run-context.tsx';
import { Tiles } from './tiles.tsx';

/** Whose badge stands under what is tapped from now on. */
export function WhoPanel() {
  const { say } = useSpeech();
  const { store, state } = useStore();
  const { plant, show } = useRunShown();
  const back = () => show({ name: 'step' });
  const tiles = Object.values(plant.badges).map((badge) => ({
    key: badge.id,
    shown: (
      <>
        <BadgeShape shape={badge.shape} /> {badge.word}
      </>
    ),
    now: badge.id === state.badge?.id,
    onTap: () => void store.chooseBadge(badge.id).then(back),
  }));
  const said = tiles.length === 0 ? <p>{say('who.none')}</p> : undefined;
  return <Tiles title={say('who.title')} said={said} tiles={tiles} onBack={back} />;
}
