import { useRef } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { stepped } from './stepped.ts';

interface StepperProps {
  readonly label: string;
  readonly value: number;
  /** The value as it is read, with its unit. */
  readonly shown: string;
  readonly note: string;
  readonly step: number;
  readonly least: number;
  readonly most: number;
  readonly onChange: (value: number) => void;
}

/** A number set by two large buttons around where it is expected. */
export function Stepper({ label, value, shown, note, onChange, ...limits }: StepperProps) {
  const { say } = useSpeech();
  const streak = useRef(0);
  const press = (direction: 1 | -1) => {
    const next = stepped({ value, streak: streak.current }, direction, limits);
    streak.current = next.streak;
    onChange(next.value);
  };
  return (
    <fieldset className="run-stepper">
      <legend className="sr">{label}</legend>
      <p className="run-read">
        <output className="run-read-value">{shown}</output> <span className="soft">{note}</span>
      </p>
      <div className="run-row">
        <button
          type="button"
          className="button run-tile run-step-button"
          aria-label={say('runs.less', { what: label })}
          onClick={() => press(-1)}
        >
          −
        </button>
        <button
          type="button"
          className="button run-tile run-step-button"
          aria-label={say('runs.greater', { what: label })}
          onClick={() => press(1)}
        >
          +
        </button>
      </div>
    </fieldset>
  );
}
