import type { CycleGrade, PressCycle, Quantity } from '@loopwright/jobs';
import type { MessageKey } from '@loopwright/words';
import { type FigureStyle, figureOf, written } from '../figure.ts';
import type { Block, Row, Section } from '../page.ts';
import { cycleCurves } from './curves.ts';
import type { CycleReader } from './reader.ts';
import { gradeWord } from './warnings.ts';

/** What was found, from the time line to the opening. */
export function cycleSections(reader: CycleReader): Section[] {
  const { cycle } = reader.report;
  if (cycle?.status !== 'ok') return [];
  return [
    timeline(reader, cycle),
    curves(reader, cycle),
    splice(reader, cycle),
    supply(reader, cycle),
    opening(reader, cycle),
  ];
}

/** A row for a quantity; temperatures as the display shows them. */
function row(reader: CycleReader, key: MessageKey, quantity: Quantity | undefined, style: FigureStyle = {}): Row[] {
  if (quantity === undefined) return [];
  const speaker = quantity.kind === 'temperature' ? reader.display : reader.voice;
  return [{ label: reader.voice.say(key), figure: figureOf(quantity, speaker, style) }];
}

const rows = (list: readonly Row[]): Block => ({ kind: 'rows', rows: list });
const text = (content: string, style: { soft?: true; strong?: true } = {}): Block => ({
  kind: 'text',
  text: content,
  ...style,
});

function timeline(reader: CycleReader, cycle: PressCycle): Section {
  const { voice } = reader;
  const { belt, delay } = cycle;
  return {
    id: 'timeline',
    title: voice.say('cycle.step.timeline'),
    blocks: [
      rows([
        ...row(reader, 'cycle.row.flow', belt.flowStart),
        ...row(reader, 'cycle.row.bonded', belt.bonded),
        ...row(reader, 'cycle.row.ready', cycle.ready),
        ...row(reader, 'cycle.row.hold-end', cycle.dwellEnd),
        ...row(reader, 'cycle.row.open', cycle.open),
        ...row(reader, 'cycle.row.delay', delay),
      ]),
      text(voice.say('cycle.range'), { soft: true }),
      { kind: 'caution', level: 'care', text: voice.say('cycle.check') },
    ],
  };
}

function curves({ voice, display }: CycleReader, cycle: PressCycle): Section {
  return { id: 'curve', title: voice.say('cycle.step.curve'), blocks: cycleCurves({ cycle, voice, display }) };
}

function splice(reader: CycleReader, cycle: PressCycle): Section {
  const { voice } = reader;
  const { belt, middle, edge } = cycle;
  const edgeText = edge && {
    off: written({ ...edge.off, value: Math.abs(edge.off.value) }, voice),
    way: edge.off.value < 0 ? 'cooler' : 'hotter',
    grade: gradeWord(edge.grade, voice),
  };
  return {
    id: 'splice',
    title: voice.say('cycle.step.splice'),
    blocks: [
      text(voice.say('cycle.computed-grade', { grade: gradeWord(middle.grade, voice) }), { strong: true }),
      ...reasons(reader, middle),
      ...(edge && edgeText ? [text(voice.say('cycle.edge', edgeText)), ...reasons(reader, edge)] : []),
      rows([
        ...row(reader, 'cycle.row.peak', belt.peak),
        ...row(reader, 'cycle.row.bond', belt.bond),
        ...row(reader, 'cycle.row.fill', belt.fill),
        ...row(reader, 'cycle.row.fill-most', belt.fillMost),
        ...row(reader, 'cycle.row.fill-needed', belt.fillNeeded),
        ...row(reader, 'cycle.row.damage', belt.damage),
      ]),
    ],
  };
}

function reasons({ voice, display }: CycleReader, { reasons: all }: CycleGrade): Block[] {
  const one = ({ code, value, limit, unit }: CycleGrade['reasons'][number]): string => {
    const write = (number: number): string => {
      if (unit === 'degC') return display.write(number, 'temperature');
      return code === 'damaged' ? voice.write(number, 'percent', { digits: 1 }) : voice.number(number, 2);
    };
    return voice.say(`cycle.reason.${code}`, { value: write(value), limit: write(limit) });
  };
  return all.length > 0 ? [{ kind: 'list', items: all.map(one) }] : [];
}

function supply(reader: CycleReader, cycle: PressCycle): Section {
  const { fed } = cycle;
  return {
    id: 'supply',
    title: reader.voice.say('cycle.step.supply'),
    blocks: [
      rows([
        ...row(reader, 'cycle.row.volts', cycle.volts),
        ...row(reader, 'cycle.row.lead', cycle.lead),
        ...row(reader, 'cycle.row.heater-volts', fed.heaterVolts),
        ...row(reader, 'cycle.row.current', cycle.current),
        ...row(reader, 'cycle.row.limit', fed.limit),
        ...row(reader, 'cycle.row.energy', cycle.energy),
        ...row(reader, 'cycle.row.air', cycle.air),
      ]),
    ],
  };
}

function opening(reader: CycleReader, cycle: PressCycle): Section {
  const { voice, display, report } = reader;
  const temperature = report.recipe ? display.write(report.recipe.open_degC, 'temperature') : '–';
  return {
    id: 'opening',
    title: voice.say('cycle.step.opening'),
    blocks: [
      { kind: 'caution', level: 'care', text: voice.say('cycle.clock', { temperature }) },
      rows([
        ...row(reader, 'cycle.row.platens-at-open', cycle.platensAtOpen),
        ...row(reader, 'cycle.row.at-open', cycle.belt.atOpen),
        ...row(reader, 'cycle.row.touch', cycle.touchLimit),
      ]),
      text(voice.say('cycle.touch'), { soft: true }),
    ],
  };
}
