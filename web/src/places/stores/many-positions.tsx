import { type Plant, positionSchema } from '@loopwright/plant';
import { type FormEvent, useId, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { choiceWord } from '../../form/field-words.ts';
import { ChoiceGroup } from '../../settings/choice-group.tsx';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { Change, PlantStore } from '../../store/plant-store.ts';
import { definitionOf, keep } from './keep.ts';
import { thingAddress } from './store-address.ts';

interface ManyPositionsProps {
  readonly store: PlantStore;
  readonly state: { readonly plant: Plant };
  readonly line: string;
}

/** More in one go is most likely a slip of the finger. */
export const mostAtOnce = 500;

/** Positions 1 to n of a line in one go; those that are there already stay as they are. */
export function ManyPositions({ store, state, line }: ManyPositionsProps) {
  const speech = useSpeech();
  const { say } = speech;
  const [, goTo] = useLocation();
  const { plant } = state;
  const [from, setFrom] = useState(() => String(nextNumber(plant, line)));
  const [to, setTo] = useState('');
  const [status, setStatus] = useState<'running' | 'empty'>('running');
  const [refused, setRefused] = useState<string>();
  const range = rangeOf(from, to);
  const fresh = range === undefined ? [] : range.filter((number) => !hasPosition(plant, line, number));
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (fresh.length === 0) return;
    const outcome = await keep(
      store,
      speech,
      fresh.flatMap((number) => newPosition(line, number, status)),
    );
    if ('refused' in outcome) setRefused(outcome.refused);
    else goTo(thingAddress('lines', line));
  };
  if (plant.lines[line] === undefined) {
    return <Said title={say('stores.gone', { id: line })} next={say('stores.unknown.next')} />;
  }
  return (
    <form className="thing-form" onSubmit={(event) => void submit(event)} noValidate>
      <h1 tabIndex={-1} className="thing-title">
        {say('stores.many.title', { line })}
      </h1>
      <NumberField label={say('stores.many.from')} value={from} onChange={setFrom} />
      <NumberField label={say('stores.many.to')} value={to} onChange={setTo} />
      <ChoiceGroup
        title={say('field.positions.status')}
        options={(['running', 'empty'] as const).map((value) => ({
          value,
          shown: choiceWord(speech, 'status', value),
        }))}
        chosen={status}
        onChoose={setStatus}
      />
      <p role="status">
        {range === undefined
          ? say('stores.many.ask', { max: mostAtOnce })
          : say('stores.many.will', { count: fresh.length, there: range.length - fresh.length })}
      </p>
      {refused === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {refused}
        </p>
      )}
      {fresh.length === 0 ? null : (
        <button type="submit" className="button main-action">
          {say('stores.many.save', { count: fresh.length })}
        </button>
      )}
      <Link href={thingAddress('lines', line)} className="button">
        {say('stores.leave')}
      </Link>
    </form>
  );
}

interface NumberFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (typed: string) => void;
}

function NumberField({ label, value, onChange }: NumberFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="entry"
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={value}
        onChange={(event) => onChange(event.target.value)}
      />
    </div>
  );
}

/** The whole numbers from one to the other, when there are any and not too many. */
export function rangeOf(from: string, to: string): readonly number[] | undefined {
  const whole = /^\s*\d{1,5}\s*$/;
  if (!whole.test(from) || !whole.test(to)) return undefined;
  const [low, high] = [Number(from), Number(to)];
  if (low < 1 || high < low || high > 10_000 || high - low >= mostAtOnce) return undefined;
  return Array.from({ length: high - low + 1 }, (_, at) => low + at);
}

const positionId = (line: string, number: number) => `${line}-${number}`;

function hasPosition(plant: Plant, line: string, number: number): boolean {
  const taken = Object.hasOwn(plant.positions, positionId(line, number));
  return (
    taken || Object.values(plant.positions).some((position) => position.line === line && position.number === number)
  );
}

function nextNumber(plant: Plant, line: string): number {
  const own = Object.values(plant.positions).filter((position) => position.line === line);
  return Math.floor(Math.max(0, ...own.map(({ number }) => number))) + 1;
}

/** The change that says that a position is there. */
export function newPosition(line: string, number: number, status: 'running' | 'empty'): readonly Change[] {
  const thing = positionSchema.parse({ id: positionId(line, number), source: 'person', line, number, status });
  return definitionOf('positions', thing);
}
