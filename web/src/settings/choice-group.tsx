import { type ReactNode, useId } from 'react';

interface Option<V> {
  readonly value: V;
  readonly shown: ReactNode;
}

interface ChoiceGroupProps<V> {
  readonly title: string;
  readonly options: readonly Option<V>[];
  readonly chosen: V | undefined;
  readonly onChoose: (value: V) => void;
}

/** One question with a few answers, all in sight, one of them chosen. */
export function ChoiceGroup<V extends string | number>({ title, options, chosen, onChoose }: ChoiceGroupProps<V>) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend>{title}</legend>
      <div className="choice-options">
        {options.map(({ value, shown }) => (
          <label className="choice-option" key={value}>
            <input type="radio" name={name} checked={value === chosen} onChange={() => onChoose(value)} />
            <span>{shown}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
