import { nearest, type Plant } from '@loopwright/plant';
import type { Voice } from '@loopwright/words';
import { Stop } from './stop.ts';

/** As wide as the terminal, within what reads well. */
export function textWidth(): number {
  return Math.min(100, Math.max(40, process.stdout.columns ?? 80));
}

/** The moment asked for, in UTC; without one, now. */
export function momentOf(asked: string | undefined, speech: Voice): string {
  if (asked === undefined) return new Date().toISOString();
  const isMoment = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?Z$/.test(asked) && !Number.isNaN(Date.parse(asked));
  if (!isMoment) throw new Stop(speech.say('terminal.not-a-moment', { value: asked }), 2);
  return new Date(asked).toISOString();
}

/** Ends the call when no position or no press has such a name. */
export function checkNames(plant: Plant, position: string, press: string | undefined, speech: Voice): void {
  if (!Object.hasOwn(plant.positions, position)) throw new Stop(unknownPosition(plant, position, speech), 1);
  if (press === undefined || Object.hasOwn(plant.presses, press)) return;
  const known = Object.keys(plant.presses).join(', ');
  throw new Stop(speech.say('terminal.unknown-press', { value: press, plant: plant.name, known }), 1);
}

function unknownPosition(plant: Plant, value: string, speech: Voice): string {
  const names = nearNames(value, Object.keys(plant.positions));
  const near = names.length === 0 ? [] : [speech.say('terminal.near-names', { names: names.join(', ') })];
  const said = speech.say('terminal.unknown-position', { value, plant: plant.name });
  return [said, ...near, speech.say('terminal.see-lines')].join(' ');
}

const mostNames = 3;

/** Positions that may be meant: those that begin as was typed, else those of the same line, else the most alike. */
function nearNames(value: string, known: readonly string[]): readonly string[] {
  const wanted = value.toLowerCase();
  const beginning = (text: string) => known.filter((id) => text !== '' && id.toLowerCase().startsWith(text));
  const same = known.filter((id) => id.toLowerCase() === wanted);
  const line = /^(.*\d-)\d*$/.exec(wanted)?.[1] ?? '';
  const alike = nearest(value, known);
  const found = [same, beginning(wanted), beginning(line), alike === undefined ? [] : [alike]];
  return (found.find((names) => names.length > 0) ?? []).slice(0, mostNames);
}
