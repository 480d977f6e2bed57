import { useEffect, useState } from 'react';
import { ChoiceGroup } from '../../settings/choice-group.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { KeptPlant } from '../../store/plant-store.ts';
import { useStore } from '../../store/use-store.tsx';

/** Which of the plants on this device is shown; nothing where there is only one. */
export function PlantChoice() {
  const { say } = useSpeech();
  const { store, state } = useStore();
  const [kept, setKept] = useState<readonly KeptPlant[]>([]);
  const shown = state.plant.id;
  useEffect(() => {
    let current = true;
    void store.plants().then(
      (plants) => current && shown !== '' && setKept(plants),
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, [store, shown]);
  if (kept.length < 2) return null;
  const inOrder = kept.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  return (
    <ChoiceGroup
      title={say('start.plants')}
      options={inOrder.map(({ id, name }) => ({ value: id, shown: <bdi>{name}</bdi> }))}
      chosen={shown}
      onChoose={(id) => void store.showPlant(id)}
    />
  );
}
