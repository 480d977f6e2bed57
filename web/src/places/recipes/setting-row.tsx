import { memo, useId } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { type SettingName, stepsOf, type Voices, writeSetting } from './settings.ts';

interface SettingRowProps {
  readonly name: SettingName;
  readonly value: number;
  /** As the recipe, or the line, has it. */
  readonly start: number;
  readonly voices: Voices;
  readonly onSet: (name: SettingName, value: number) => void;
}

/** One setting: its value, a step down, a slider, a step up. */
export const SettingRow = memo(({ name, value, start, voices, onSet }: SettingRowProps) => {
  const { say } = useSpeech();
  const id = useId();
  const steps = stepsOf(name, start, voices);
  const place = Math.round((value - start) / steps.step);
  const label = say(`recipes.set.${name}`);
  const shown = writeSetting(name, value, voices);
  const to = (wanted: number) => {
    const next = Math.min(Math.max(wanted, steps.first), steps.last);
    if (next !== place) onSet(name, start + next * steps.step);
  };
  return (
    <div className="setting" data-setting={name}>
      <label htmlFor={id}>{label}</label>
      <output htmlFor={id} className="setting-value">
        {shown}
      </output>
      {place === 0 ? null : (
        <span className="setting-was caption">{say('recipes.was', { value: writeSetting(name, start, voices) })}</span>
      )}
      <div className="setting-move">
        <button
          type="button"
          className="button"
          aria-label={say('recipes.less', { setting: label })}
          onClick={() => to(place - 1)}
        >
          −
        </button>
        <input
          id={id}
          type="range"
          min={steps.first}
          max={steps.last}
          step={1}
          value={place}
          aria-valuetext={shown}
          onChange={(event) => to(Number(event.target.value))}
        />
        <button
          type="button"
          className="button"
          aria-label={say('recipes.more', { setting: label })}
          onClick={() => to(place + 1)}
        >
          +
        </button>
      </div>
    </div>
  );
});
