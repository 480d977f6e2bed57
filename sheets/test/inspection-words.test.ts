import { type CurveWarning, silentCauses, type WatchCode, watchCauses, watchCodes } from '@loopwright/jobs/curve-watch';
import {
  becauseCodes,
  type DefectAnswer,
  defectAnswers,
  defectCauses,
  defectCodes,
  defects,
  findingPlaces,
  inspectionMeasures,
  judgeInspection,
  nextCodes,
  nowCodes,
} from '@loopwright/jobs/inspection';
import { inspectionWords, languages, voice, watchWords } from '@loopwright/words';
import { describe, expect, it } from 'vitest';

const bare = /inspection\.[a-z]|watch\.[a-z]|\{|\}|undefined/;
/** A value that nobody gave reads as a dash. */
const dash = /(^| )–( |\.|,|$)/;

/** What each warning carries, as the watch gives it. */
const reading = { at_s: 250, shown_degC: 90, expected_degC: 110, least_degC: 105, most_degC: 116, off_K: 20 };
const carried: Readonly<Record<WatchCode, CurveWarning['data']>> = {
  'slow-ramp': { ...reading, forecast_s: 500, predicted_s: 415, late_s: 85 },
  'fast-ramp': reading,
  'side-slow': { at_s: 220, shown_degC: 70, other_degC: 110, off_K: 41 },
  'set-not-reached': { at_s: 650, limit_s: 622, shown_degC: 120, set_degC: 182 },
  'plateau-low': reading,
  overshoot: reading,
  'above-cap': { at_s: 500, shown_degC: 221, limit_degC: 215 },
  'plateau-unsteady': { swing_K: 6, shown_degC: 180 },
  'hold-short': { held_s: 60, wanted_s: 160, off_s: 100 },
  'hold-long': { held_s: 260, wanted_s: 160, off_s: 100 },
  'cooling-slow': reading,
  'opened-hot': { at_s: 900, shown_degC: 70, limit_degC: 50 },
  'reading-jumps': { at_s: 500, from_degC: 180, shown_degC: 60, count: 1 },
  'reading-impossible': { at_s: 500, shown_degC: 300, least_degC: 10, most_degC: 222, count: 1 },
  gap: { at_s: 380, to_s: 640, length_s: 260, count: 1 },
};

describe.each(languages)('words of an inspection, %s', (language) => {
  const words = inspectionWords(voice(language, 'metric'));
  const watch = watchWords(voice(language, 'metric'));
  const because = (code: (typeof becauseCodes)[number]): string =>
    words.because({
      code,
      defect: 'kink',
      face: 'roller',
      measure: 'bow',
      watch: 'hold-short',
      data: { value: 0.0025, accept: 0.002, refuse: 0.003 },
    });

  const all: Readonly<Record<string, readonly string[]>> = {
    names: defectCodes.map(words.name),
    looks: defectCodes.map(words.look),
    questions: defectCodes.map((defect) => words.ask({ code: 'cause', defect })),
    causes: defectCauses.map(words.cause),
    answers: defectAnswers.map(words.answer),
    places: findingPlaces.map(words.place),
    measures: inspectionMeasures.map(words.measure),
    now: nowCodes.map(words.now),
    next: nextCodes.map(words.next),
    severities: ['critical', 'major', 'minor'].map(words.severity),
    levels: ['fine', 'look-closer', 'refused'].map(words.level),
    reasons: becauseCodes.map(because),
    asks: ['measure', 'place', 'opens'].map((code) => words.ask({ code, defect: 'voids', measure: 'void' })),
    lines: (['title', 'proposed', 'no-proof', 'second'] as const).map(words.line),
  };

  it.each(Object.entries(all))('[SINSP-01] %s all have their words, and no two the same', (_, said) => {
    expect(said.filter((text) => text === '' || bare.test(text) || dash.test(text))).toEqual([]);
    expect(new Set(said).size).toBe(said.length);
  });

  it('[SINSP-02] a defect is named in four words at most, and its look fits one line', () => {
    expect(defectCodes.map(words.name).filter((name) => name.split(' ').length > 4)).toEqual([]);
    expect(defectCodes.map(words.look).filter((look) => look.length > 80)).toEqual([]);
  });

  it('[SINSP-03] a reason says its numbers with their units, and what the defect does to the belt', () => {
    const splice = { width_m: 0.05, elongation: 0.008 };
    const { because: reasons } = judgeInspection({ findings: [{ defect: 'kink', value: 0.0035 }], splice });
    const [said = ''] = reasons.map(words.because);
    expect(said).toContain(language === 'en' ? '3.50\u00a0mm' : '3,50\u00a0mm');
    expect(said).toContain('14\u00a0%');
    const us = inspectionWords(voice(language, 'us'));
    expect(
      us.because({ code: 'over-limit', defect: 'kink', measure: 'bow', data: { value: 0.0035, refuse: 0.003 } }),
    ).toMatch(/0[.,]138\u00a0in/);
    expect(words.value('outline', 0.2)).toBe('20\u00a0%');
    expect(words.value('colour', 3.4)).toBe(language === 'en' ? '3.4' : '3,4');
  });

  it('[SINSP-04] every warning says what is seen, what it can be and what to do', () => {
    const warnings = watchCodes.map((code) => ({
      code,
      side: 'top',
      data: carried[code],
      causes: ['fan-half', 'air-warm'],
    }));
    const seen = warnings.map(watch.seen);
    expect(seen.filter((text) => bare.test(text) || dash.test(text))).toEqual([]);
    for (const said of [seen, watchCodes.map(watch.todo), watchCodes.map(watch.short), watchCauses.map(watch.cause)]) {
      expect(said.filter((text) => text === '' || bare.test(text))).toEqual([]);
      expect(new Set(said).size).toBe(said.length);
    }
    expect(watch.mayBe({ code: 'gap', data: {}, causes: [] })).toBe('');
    expect(watch.mayBe({ code: 'cooling-slow', data: {}, causes: ['fan-half'] })).not.toMatch(bare);
    expect(watch.silent(silentCauses)).not.toMatch(bare);
  });

  it('[SINSP-05] the display’s unit is kept, and what was not forecast is not said', () => {
    const display = watchWords(voice(language, 'metric'), voice(language, 'us'));
    const said = display.seen({ code: 'slow-ramp', data: reading, causes: [] });
    expect(said).toContain('194\u00a0°F');
    expect(said).not.toMatch(bare);
    const early = watch.seen({ code: 'opened-hot', data: { at_s: 700, expected_s: 1040, limit_degC: 50 }, causes: [] });
    expect(early).not.toMatch(dash);
  });
});

describe('questions', () => {
  it('[SINSP-06] a question with yes and no is answered with yes and no, another with its own answers', () => {
    const plain: readonly DefectAnswer[] = ['yes', 'no'];
    for (const code of defectCodes) {
      const answers = Object.keys(defects[code].answers) as DefectAnswer[];
      const own = answers.filter((answer) => !plain.includes(answer));
      expect(own.length === 0 || own.length === answers.length, code).toBe(true);
    }
  });
});
