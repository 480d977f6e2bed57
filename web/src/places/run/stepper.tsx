import type { ReactNode } from 'react';
import { useRef } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { stepped } from './stepped.ts';

interface StepperProps {
  readonly label: string;
  readonly value: number;
  /** The value as it is read, with its unit. */
  readonly shown: string;
  readonly note: ReactNode;
  readonly step: number;
  readonly least: number;
  readonly most: number;
  /** True once somebody has looked at it. */
  readonly touched: boolean;
  readonly onChange: (value: number) => void;
}

/** A number set by two large buttons around where it is expected. */
export function Stepper({ label, value, shown, note, onChange, touched, ...limits }: StepperProps) {
  const { say } = useSpeech();
  const streak = useRef(0);
  const press = (direction: 1 | -1) => {
    const next = stepped({ value, streak: streak.current }, direction, limits);
    streak.current = next.streak;
    onChange(next.value);
  };
  return (
    <fieldset className="run-stepper" data-touched={touched}>
      <legend className="sr">{label}</legend>
      <button
        type="button"
        className="button run-step-button"
        aria-label={say('runs.less', { what: label })}
        onClick={() => press(-1)}
      >
        −
      </button>
      <button type="button" className="button run-read" aria-pressed={touched} onClick={() => onChange(value)}>
        <span className="run-read-label">{label}</span>
        <output className="run-read-value">{shown}</output>
        <span className="caption">{note}</span>
      </button>
      <button
        type="button"
        className="button run-step-button"
        aria-label={say('runs.greater', { what: label })}
        onClick={() => press(1)}
      >
        +
      </button>
    </fieldset>
  );
}
