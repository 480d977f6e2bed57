import type { Quantity } from '@loopwright/jobs';
import type { RunNumber } from '@loopwright/records/run';
import { isQuantityKind, type Voice } from '@loopwright/words';
import { figureOf, sourceWord } from '../figure.ts';
import type { Row, Section } from '../page.ts';
import { type AuditReader, rows, section } from './reader.ts';

/** Every number the run rests on: computed ones with formula and inputs, the others with where they come from. */
export function numberSections(reader: AuditReader): Section[] {
  const { report, voice } = reader;
  const { software, predicted, tension } = report.record;
  const card = [...software.numbers, ...(tension ? [{ ...tension.elongation, name: 'elongation-read' }] : [])];
  const cycle = predicted?.numbers ?? [];
  const all = [...card, ...cycle];
  const formulas = all.flatMap((number) => formulaRow(number, reader));
  const parts = [
    section('numbers', voice.say('audit.step.numbers'), [rows(card.flatMap((number) => numberRow(number, reader)))]),
    section('cycle-numbers', voice.say('audit.step.cycle-numbers'), [
      rows(cycle.flatMap((number) => numberRow(number, reader))),
    ]),
    section('formulas', voice.say('audit.step.formulas'), [rows(formulas)]),
  ];
  return parts.filter(({ blocks }) => blocks.some((block) => block.kind === 'rows' && block.rows.length > 0));
}

/** The number as a quantity; undefined for a kind that this version does not know. */
function quantityOf({ value, kind, low, high, source, formula, inputs }: RunNumber): Quantity | undefined {
  if (!isQuantityKind(kind)) return undefined;
  return {
    value,
    kind: kind as Quantity['kind'],
    source,
    ...(low !== undefined && { low }),
    ...(high !== undefined && { high }),
    ...(formula !== undefined && inputs !== undefined && { worked: { formula, inputs, value } }),
  };
}

function numberRow(number: RunNumber, { voice, display }: AuditReader): Row[] {
  const label = nameOf(number.name, voice);
  const quantity = quantityOf(number);
  if (quantity === undefined)
    return [{ label, text: voice.number(number.value, 4), note: sourceWord(number.source, voice) }];
  const speaker = quantity.kind === 'temperature' ? display : voice;
  return [{ label, figure: figureOf(quantity, speaker, quantity.kind === 'time' ? { digits: 0 } : {}) }];
}

function nameOf(name: string, voice: Voice): string {
  const key = [`audit.number.${name}`, `run.measure.${name}`, `field.${name}`].find((each) => voice.has(each));
  return key !== undefined && voice.has(key) ? voice.say(key) : name;
}

/** The formula with its numbers in place; of one that this version does not know, its name and inputs. */
function formulaRow(number: RunNumber, { voice }: AuditReader): Row[] {
  const quantity = quantityOf(number);
  const worked = quantity && figureOf(quantity, voice).worked;
  if (worked) return [{ label: worked.title, text: worked.withNumbers, note: worked.source }];
  if (number.inputs === undefined) return [];
  const inputs = Object.entries(number.inputs).map(
    ([name, value]) => `${name}\u00a0=\u00a0${voice.number(value, Number.isInteger(value) ? 0 : 3)}`,
  );
  return [{ label: nameOf(number.name, voice), text: [number.formula ?? '', inputs.join(', ')].join(' ').trim() }];
}
