import { type CycleNumber, cycleGroups, type PressCycle } from '@loopwright/jobs';
import { figureOf, workedOf, written } from '../figure.ts';
import type { Row, Section } from '../page.ts';
import type { CycleReader } from './reader.ts';

/** What the cycle rests on, group by group with the source of each number, and the formulas behind it. */
export function inputSections(reader: CycleReader): Section[] {
  const { report, voice } = reader;
  const { cycle } = report;
  if (cycle?.status !== 'ok') return [];
  const groups = cycleGroups.map((group): Section => {
    const rows = cycle.numbers.filter((number) => number.group === group).map((number) => inputRow(reader, number));
    return { id: `rests-${group}`, title: voice.say(`cycle.step.${group}`), blocks: [{ kind: 'rows', rows }] };
  });
  const note: Section = {
    id: 'examples',
    title: voice.say('cycle.step.examples'),
    blocks: [{ kind: 'text', text: voice.say('cycle.examples') }],
  };
  return [...groups, note, ...formulas(reader, cycle)];
}

function inputRow({ voice, display }: CycleReader, { field, quantity, conductivity }: CycleNumber): Row {
  const key = `field.${field}`;
  const speaker = quantity.kind === 'temperature' ? display : voice;
  const note = conductivity && voice.say('cycle.conducts', { value: written(conductivity, voice) });
  return {
    label: voice.has(key) ? voice.say(key) : field,
    figure: figureOf(quantity, speaker, quantity.kind === 'time' ? { digits: 0 } : {}),
    ...(note !== undefined && { note }),
  };
}

function formulas({ voice }: CycleReader, { fed, numbers }: PressCycle): Section[] {
  const all = [
    ...numbers.map(({ quantity }) => quantity),
    fed.current,
    fed.heaterVolts,
    ...(fed.limit ? [fed.limit] : []),
  ];
  const rows = all.flatMap((quantity): Row[] => {
    const worked = workedOf(quantity, voice);
    return worked ? [{ label: worked.title, text: worked.withNumbers, note: worked.source }] : [];
  });
  return rows.length > 0
    ? [{ id: 'formulas', title: voice.say('cycle.step.formulas'), blocks: [{ kind: 'rows', rows }] }]
    : [];
}
