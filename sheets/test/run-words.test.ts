import {
  actionCodes,
  deviationCodes,
  foldRun,
  runFacts,
  runGroups,
  startRun,
  timerCodes,
  viewRun,
  whyNotCodes,
} from '@loopwright/jobs/press-run';
import {
  displayWords,
  dryAnswers,
  recipeAnswers,
  runFaces,
  runMeasures,
  runReasons,
  runSigns,
  runSteps,
  verdicts,
} from '@loopwright/records/run';
import { languages, runWords, voice } from '@loopwright/words';
import { describe, expect, it } from 'vitest';
import { demoCard } from './demo-pages.ts';

const now = { at: '2026-11-25T02:10:00.000Z', boot: 'boot', up_ms: 1000, by: 'b1', device: 'phone' };
const changes = startRun(demoCard('QM-04-3'), { run: 'RUN00001', people: 1, slot: 0 });
const state = foldRun(changes.map((change, i) => ({ ...change, ...now, id: String(i).padStart(64, '0') })));
if (state === undefined) throw new Error('the run did not start');

const phases = ['before', 'hands', 'heating', 'holding', 'cooling', 'after', 'restart', 'over'] as const;
const meanwhile = [
  'pressure-steady',
  'heated',
  'hold-ended',
  'cycle-ended',
  'flat-over',
  'other-device',
  'other-badge',
  'clock-set',
  'restarted',
  'nothing',
] as const;

describe.each(languages)('the words of a run, %s', (language) => {
  const words = runWords(voice(language, 'metric'), runFacts(state));

  const all: Readonly<Record<string, readonly string[]>> = {
    steps: runSteps.flatMap((step) => [words.step(step), words.todo(step), words.why(step)]),
    groups: runGroups.map(words.group),
    actions: actionCodes.map(words.action),
    choices: [...dryAnswers, ...recipeAnswers, ...verdicts, ...displayWords, ...runFaces].map(words.choice),
    reasons: runReasons.map(words.reason),
    measures: runMeasures.map(words.measure),
    phases: phases.map(words.phase),
    timers: timerCodes.map(words.timer),
    signs: runSigns.map(({ word }) => words.sign(word)),
    sureness: ['steady', 'wall', 'doubtful'].map(words.sure),
    deviations: deviationCodes.map((code) => words.deviation({ code, data: {}, step: 'cut' })),
    blocked: whyNotCodes.map((code) => words.blocked({ code, steps: ['cut'] })),
    meanwhile: meanwhile.map((code) => words.meanwhile({ code, ago_s: 360, data: {} })),
  };

  it.each(Object.entries(all))('[SRUN-01] %s all have their words, and no two the same', (_, said) => {
    expect(said.filter((text) => text === '' || /run\.[a-z]|\{|\}/.test(text))).toEqual([]);
    expect(new Set(said).size).toBe(said.length);
  });

  it('[SRUN-02] every number of the card stands in its place', () => {
    const todo = viewRun(state, now).steps.map(({ step }) => words.todo(step));
    const dashes = todo.filter((text) => / –|– |\(–\)/.test(text));
    // The date of the next visit is known once the belt is tensioned.
    expect(dashes).toHaveLength(1);
  });
});
