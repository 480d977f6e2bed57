import { useId } from 'react';
import { useSpeech } from '../speech/use-speech.tsx';

interface PlantNameEntryProps {
  readonly text: string;
  readonly help: string;
  readonly wrong: string | undefined;
  readonly onType: (text: string) => void;
}

/** The question what the plant is called: heading, one field, and what is wrong with it. */
export function PlantNameEntry({ text, help, wrong, onType }: PlantNameEntryProps) {
  const { say } = useSpeech();
  const id = useId();
  return (
    <>
      <h1 tabIndex={-1}>
        <label htmlFor={id}>{say('start.name')}</label>
      </h1>
      <input
        id={id}
        type="text"
        className="entry"
        dir="auto"
        autoComplete="off"
        value={text}
        aria-invalid={wrong !== undefined}
        aria-describedby={`${id}-help`}
        onChange={(event) => onType(event.target.value)}
      />
      <p id={`${id}-help`}>{help}</p>
      {wrong === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {wrong}
        </p>
      )}
    </>
  );
}
