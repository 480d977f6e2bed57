import type { Plant } from '@loopwright/plant';
import { useId } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { bestRecipe, lineOf, type Things } from './start-of.ts';

interface ChooseThingsProps {
  readonly plant: Plant;
  readonly things: Things;
  readonly onChoose: (things: Things) => void;
}

/** Belt, press, recipe, and where it is plugged in. */
export function ChooseThings({ plant, things, onChoose }: ChooseThingsProps) {
  const { say } = useSpeech();
  const { belt, press, recipe, line } = things;
  const chooseBelt = (id: string) => {
    const next = plant.belts[id] ?? belt;
    const other = line?.belt === next.id ? line : lineOf(plant, next);
    onChoose({ ...things, belt: next, recipe: bestRecipe(plant, next, press) ?? recipe, line: other });
  };
  const choosePress = (id: string) => {
    const next = plant.presses[id] ?? press;
    onChoose({ ...things, press: next, recipe: bestRecipe(plant, belt, next) ?? recipe });
  };
  const chooseRecipe = (id: string) => onChoose({ ...things, recipe: plant.recipes[id] ?? recipe });
  const presses = Object.values(plant.presses).map(({ id, name }) => ({ id, shown: `${id} ${name}` }));
  const lines = Object.values(plant.lines).map(({ id, name }) => ({ id, shown: `${id} ${name}` }));
  const plain = (all: Readonly<Record<string, { readonly id: string }>>) =>
    Object.values(all).map(({ id }) => ({ id, shown: id }));
  return (
    <div className="choose-things">
      <Choose label={say('field.any.belt')} value={belt.id} options={plain(plant.belts)} onChoose={chooseBelt} />
      <Choose label={say('field.any.press')} value={press.id} options={presses} onChoose={choosePress} />
      <Choose
        label={say('stores.one.recipes')}
        value={recipe.id}
        options={plain(plant.recipes)}
        onChoose={chooseRecipe}
      />
      <Choose
        label={say('recipes.plugged-in')}
        value={line?.id ?? ''}
        options={[{ id: '', shown: say('recipes.elsewhere') }, ...lines]}
        onChoose={(id) => onChoose({ ...things, line: plant.lines[id] })}
      />
    </div>
  );
}

interface ChooseProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly id: string; readonly shown: string }[];
  readonly onChoose: (id: string) => void;
}

function Choose({ label, value, options, onChoose }: ChooseProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id} className="field-label">
        {label}
      </label>
      <select id={id} className="entry" value={value} onChange={(event) => onChoose(event.target.value)}>
        {options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.shown}
          </option>
        ))}
      </select>
    </div>
  );
}
