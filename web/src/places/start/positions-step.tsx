import type { Line } from '@loopwright/plant';
import { type FormEvent, useId, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { PlantStore } from '../../store/plant-store.ts';
import { keep } from '../stores/keep.ts';
import { mostAtOnce, newPosition, rangeOf } from '../stores/many-positions.tsx';

/** Positions 1 to n of the first line. */
export function PositionsStep({ store, line }: { readonly store: PlantStore; readonly line: Line }) {
  const speech = useSpeech();
  const { say } = speech;
  const id = useId();
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState<string>();
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const numbers = rangeOf('1', typed);
    if (numbers === undefined) return setWrong(say('start.positions.wrong', { value: typed.trim(), max: mostAtOnce }));
    const outcome = await keep(
      store,
      speech,
      numbers.flatMap((number) => newPosition(line.id, number, 'running')),
    );
    setWrong('refused' in outcome ? outcome.refused : undefined);
  };
  return (
    <form className="thing-form" onSubmit={(event) => void submit(event)} noValidate>
      <h1 tabIndex={-1}>{say('start.positions', { line: line.id })}</h1>
      <p>{say('start.positions.help')}</p>
      <div className="field">
        <label className="field-label" htmlFor={id}>
          {say('start.positions.count')}
        </label>
        <input
          id={id}
          type="text"
          inputMode="numeric"
          autoComplete="off"
          className="entry"
          value={typed}
          aria-invalid={wrong !== undefined}
          onChange={(event) => setTyped(event.target.value)}
        />
      </div>
      {wrong === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {wrong}
        </p>
      )}
      <button type="submit" className="button main-action">
        {say('start.next')}
      </button>
    </form>
  );
}
