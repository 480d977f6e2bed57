import { usualOpening_degC } from './deviation.ts';
import { retensionDay } from './retension-day.ts';
import type { RunState } from './run-state.ts';

/** A number of a run as its sentences take it. */
export interface RunFactNumber {
  readonly value: number;
  readonly kind: string;
  /** True for what the press display shows. */
  readonly onDisplay?: boolean;
}

/** What the sentences of a run take: names of things and numbers in SI, under the names of the sentences. */
export interface RunFacts {
  readonly names: Readonly<Record<string, string>>;
  readonly numbers: Readonly<Record<string, RunFactNumber>>;
  readonly people: 1 | 2;
  readonly retensionOn?: string;
}

/**
 * Names and numbers of a run for its sentences.
 *
 * @param state - of the run
 */
export function runFacts(state: RunState): RunFacts {
  const retensionOn = retensionDay(state);
  return {
    names: names(state),
    numbers: { ...cardNumbers(state), ...displayNumbers(state) },
    people: state.people,
    ...(retensionOn !== undefined && { retensionOn }),
  };
}

function names({ started, roll = started.things.roll }: RunState): Record<string, string> {
  const { belt, die, template, press, recipe } = started.things;
  const known = {
    belt: belt.id,
    roll: roll?.id ?? belt.id,
    die: die?.id,
    template: template?.id,
    press: press?.name,
    recipe: recipe && `${recipe.id} · ${recipe.revision}`,
  };
  return Object.fromEntries(
    Object.entries(known).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
}

/** A fence that stays where it is has no number. */
function cardNumbers({ started }: RunState): Record<string, RunFactNumber> {
  const said = started.numbers.filter(({ name, value }) => name !== 'second-end-fence' || value !== 0);
  return Object.fromEntries(said.map(({ name, value, kind }) => [inSentence(name), { value, kind }]));
}

/** `square-length` is `squareLength` in a sentence. */
function inSentence(name: string): string {
  return name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}

function displayNumbers({ started }: RunState): Record<string, RunFactNumber> {
  const { recipe } = started.things;
  const gauge = started.numbers.find(({ name }) => name === 'gauge-pressure');
  const onDisplay = true;
  return {
    open: { value: recipe?.open_degC ?? usualOpening_degC, kind: 'temperature', onDisplay },
    ...(gauge && { gaugePressure: { value: gauge.value, kind: gauge.kind, onDisplay } }),
    ...(recipe && {
      top: { value: recipe.top_degC, kind: 'temperature', onDisplay },
      bottom: { value: recipe.bottom_degC, kind: 'temperature', onDisplay },
      dwell: { value: recipe.dwell_s, kind: 'time', onDisplay },
    }),
  };
}
