import type { PressCycleReport } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { voiceOfDisplay } from './card/press-display.ts';
import { inputSections } from './cycle/inputs.ts';
import type { CycleReader } from './cycle/reader.ts';
import { cycleSections } from './cycle/sections.ts';
import { cycleWarningBlocks, gradeWord } from './cycle/warnings.ts';
import { figureOf } from './figure.ts';
import type { Page, Section } from './page.ts';

/**
 * A press cycle as a page: time line, curves, what becomes of the splice, outlet, opening, and all it rests on.
 *
 * @param report - what the job found
 * @param voice - language and units of the reader
 * @returns the page, free of any medium
 */
export function cyclePage(report: PressCycleReport, voice: Voice): Page {
  const reader: CycleReader = { report, voice, display: voiceOfDisplay(report.press, voice) };
  const { line, position, plant, press, recipe, belt, engine, revision, now, tried } = report;
  const place = [...(line ? [line.name] : []), ...(position?.name ? [position.name] : []), plant.name];
  const what = [
    belt.id,
    ...(recipe ? [recipe.id] : []),
    ...(tried ? [voice.say('cycle.tried')] : []),
    ...(press ? [press.name] : []),
  ];
  return {
    language: voice.language,
    title: position ? `${position.line} · ${position.number}` : (recipe?.id ?? belt.id),
    subtitle: [voice.say('cycle.title'), ...what, ...place].join(' · '),
    state: stateOf(reader),
    time: timeOf(reader),
    front: [...warnings(reader), ...cycleSections(reader)],
    back: inputSections(reader),
    code: '',
    footer: [
      voice.say('card.foot.check'),
      voice.say('card.foot.rules'),
      voice.say('cycle.version', { engine, revision, moment: voice.moment(now) }),
    ],
    now,
  };
}

function warnings(reader: CycleReader): Section[] {
  const blocks = cycleWarningBlocks(reader);
  return blocks.length > 0 ? [{ id: 'warnings', title: reader.voice.say('cycle.step.warnings'), blocks }] : [];
}

function stateOf({ report, voice }: CycleReader): Page['state'] {
  const { cycle } = report;
  if (cycle?.status !== 'ok') return { shape: 'empty', word: voice.say('cycle.no-time') };
  const word = voice.say('cycle.computed-grade', { grade: gradeWord(cycle.middle.grade, voice) });
  return { shape: cycle.middle.grade === 'good' ? 'running' : 'due', word };
}

function timeOf({ report, voice }: CycleReader): Page['time'] {
  const { cycle } = report;
  const label = voice.say('cycle.time');
  if (cycle?.status === 'ok') return { label, figure: figureOf(cycle.open, voice) };
  return { label, figure: { value: '–', unit: '', source: voice.say('source.computed'), computed: true } };
}
