import { Refusal } from '@loopwright/engine/refusal';
import type { Plant } from '@loopwright/plant';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../tools/validation/check.ts';
import { type SpliceCard, spliceCard } from '../src/index.ts';
import { demoPlant } from './demo-plant.ts';

const plant = demoPlant();
const now = '2026-11-25T02:10:00Z';
const card = (position: string, people: 1 | 2 = 2): SpliceCard => spliceCard(plant, position, { now, people });
const codes = (of: SpliceCard): string[] => of.warnings.map(({ code }) => code);
const practice = 'common practice, no source';

/** The same plant with one thing changed. */
function withThing<K extends 'positions' | 'lines' | 'presses' | 'rolls' | 'belts'>(
  kind: K,
  id: string,
  change: Partial<Plant[K][string]>,
): Plant {
  const thing = plant[kind][id];
  return { ...plant, [kind]: { ...plant[kind], [id]: { ...thing, ...change } } };
}

const without = (kind: 'dies' | 'templates' | 'presses' | 'recipes' | 'rolls' | 'pulleys'): Plant => ({
  ...plant,
  [kind]: {},
});

describe('the belt torn at 02:00', () => {
  const torn = card('QM-04-3');

  it('[CARD-01] endless, tip to tip and square differ by one finger length and two wastes', () => {
    const { lengths } = torn;
    const row = (id: string, published: number, ours: number | undefined, tolerance: number, why: string) =>
      checkAgainst({
        topic: 'card',
        id: `Spine ${id}`,
        source: practice,
        evidence: 'practice',
        inputs: 'path 64.80 m, 0.90 %, fingers 80 mm, die waste 25 mm',
        unit: 'mm',
        published,
        ours: 1000 * (ours ?? Number.NaN),
        tolerance,
        why,
      });
    row(
      'endless',
      64222,
      lengths?.endless.value,
      0.5,
      'printed to the millimetre; all three sources within their ranges',
    );
    row('tip to tip less endless', 80, (lengths?.tipToTip.value ?? 0) - (lengths?.endless.value ?? 0), 1e-6, 'exact');
    row('square less tip to tip', 50, (lengths?.square.value ?? 0) - (lengths?.tipToTip.value ?? 0), 1e-6, 'exact');
    const survey = lengths?.sources.find(({ kind }) => kind === 'survey')?.length.value;
    row('endless by survey', 64222, survey, 0.5, 'printed to the millimetre');
  });

  it('[CARD-02] marks: 2 000 mm becomes 2 018 ± 0.5, about 1 080 N a strand once settled', () => {
    expect(torn.marks.before.value).toBe(2);
    expect(torn.marks.after.value).toBeCloseTo(2.018, 9);
    expect(1000 * (torn.marks.after.high ?? 0)).toBeCloseTo(2018.5, 6);
    expect(torn.marks.strandTension.value).toBeCloseTo(1080, 6);
    expect(torn.marks.freshTension.value).toBeCloseTo(1944, 6);
  });

  it('[CARD-03] travel for the stretch is 289 mm at 180 degrees and the belt meshes in place', () => {
    const { takeUp } = torn;
    const stretch_m = (takeUp.setAt?.value ?? 0) - (takeUp.slackAt?.value ?? 0);
    expect(1000 * stretch_m).toBeCloseTo(289, 0);
    expect(takeUp.meshesInPlace).toBe(true);
  });

  it('[CARD-04] gauge 2.2 bar with strips of belt height is 4.0 bar on the belt without them', () => {
    expect((torn.press.gaugePressure?.value ?? 0) / 1e5).toBeCloseTo(2.2, 9);
    expect((torn.press.pressureWithoutStrips?.value ?? 0) / 1e5).toBeCloseTo(4.03, 2);
  });

  it('[CARD-05] three sources of the length agree and the result lies between them', () => {
    expect(torn.lengths?.sources.map(({ kind }) => kind)).toEqual(['survey', 'record', 'old-belt']);
    expect(torn.lengths?.sourcesAgree).toBe(true);
    const values = torn.lengths?.sources.map(({ length }) => length.value) ?? [];
    expect(torn.lengths?.endless.value).toBeGreaterThan(Math.min(...values));
    expect(torn.lengths?.endless.value).toBeLessThan(Math.max(...values));
  });

  it('[CARD-06] jogging three turns of a 64 m loop takes about 4 min', () => {
    expect((torn.jogTime?.value ?? 0) / 60).toBeCloseTo(4, 1);
  });

  it('[CARD-07] the state, revolutions and the press in date', () => {
    expect(torn.state).toBe('torn');
    expect(torn.revolutions?.value).toBe(118_000);
    expect(torn.press.press?.id).toBe('P1');
    expect(torn.press.checkAge_days).toBe(12);
  });

  it('[CARD-08] lock-out comes before everything that cuts: restart ends with watching the splice', () => {
    expect(torn.restart[0]).toBe('tension-three-quarters');
    expect(torn.restart.indexOf('lock-off')).toBeLessThan(torn.restart.indexOf('jog-three-turns'));
    expect(torn.restart.indexOf('lock-on')).toBeLessThan(torn.restart.indexOf('final-tension'));
    expect(torn.restart.at(-1)).toBe('watch-splice');
  });
});

describe('stories of the other lines', () => {
  it('[CARD-10] Sort slips at 0.55 % and needs 0.77 %', () => {
    const sort = card('QM-02-3');
    expect(codes(sort)).toContain('slip');
    expect(100 * (sort.tension.elongationForNoSlip?.value ?? 0)).toBeCloseTo(0.77, 2);
  });

  it('[CARD-11] Infeed is healthy: no slip, nothing under its limit', () => {
    const infeed = card('QM-01-1');
    expect(infeed.tension.slipReserve?.value).toBeGreaterThan(1.15);
    expect(codes(infeed)).not.toContain('slip');
    expect(codes(infeed)).not.toContain('pulley-under-limit');
  });

  it('[CARD-12] Wash exit: a re-splice needs 106 + 116 + 12 = 234 mm and is refused at 198 of 270', () => {
    const at198 = Object.values(plant.positions).find((p) => p.line === 'QM-05' && p.takeUp_m === 0.198);
    const resplice = at198 && card(at198.id).takeUp.resplice;
    const row = (id: string, published: number, ours: number | undefined) =>
      checkAgainst({
        topic: 'card',
        id: `Wash exit re-splice ${id}`,
        source: `${practice}; derived: 2 sin(w/2) = 2 at 180 degrees`,
        evidence: 'derived',
        inputs: '24 368 mm, 0.95 %, fingers 80 mm, trim 25 mm, slack 24 mm of loop',
        unit: 'mm',
        published,
        ours: 1000 * (ours ?? Number.NaN),
        tolerance: 0.5,
        why: 'printed to the millimetre',
      });
    row('given back', 106, resplice?.givenBack.value);
    row('stretch', 116, resplice?.stretch.value);
    row('slack', 12, resplice?.slack.value);
    // The three parts of the sum are printed rounded; the sum itself to the millimetre below.
    expect(1000 * (resplice?.needed.value ?? 0)).toBeGreaterThan(232);
    expect(1000 * (resplice?.needed.value ?? 0)).toBeLessThan(234.5);
    expect(1000 * (resplice?.available.value ?? 0)).toBeCloseTo(198, 6);
    expect(resplice?.possible).toBe(true);
    expect(resplice?.meshesInPlace).toBe(false);
  });

  it('[CARD-13] Wash exit: wet area and a snub of 40 mm under its limit are warned of', () => {
    expect(codes(card('QM-05-1'))).toContain('wet-area');
    expect(codes(card('QM-05-1'))).toContain('counter-bend-under-limit');
  });

  it('[CARD-14] Issue is a static-sensitive area and asks for a resistance meter', () => {
    const issue = card('QM-06-1');
    expect(codes(issue)).toContain('antistatic-area');
    expect(issue.gather.map(({ code }) => code)).toContain('resistance-meter');
    expect(issue.inspect).toContain('antistatic-resistance');
  });

  it('[CARD-15] every position of the plant gets a card with no number missing where the plant knows it', () => {
    for (const id of Object.keys(plant.positions)) {
      const made = card(id);
      expect(made.lengths?.endless.value, id).toBeGreaterThan(1);
      expect(JSON.stringify(made), id).not.toMatch(/null|NaN|Infinity/);
    }
  });
});

describe('what the plant does not know never blocks the card', () => {
  it.each([
    ['dies', 'die'],
    ['templates', 'template'],
    ['presses', 'press'],
    ['recipes', 'recipe'],
    ['rolls', 'roll'],
    ['pulleys', 'path'],
  ] as const)('[CARD-30] without %s the card says "%s" is missing and goes on', (kind, code) => {
    const made = spliceCard(without(kind), 'QM-04-3', { now });
    expect(made.missing).toContain(code);
    expect(made.lengths?.endless.value).toBeGreaterThan(64);
  });

  it('[CARD-31] with no pulleys, record or old belt the length itself is missing, not guessed', () => {
    const bare = { ...without('pulleys'), positions: withThing('positions', 'QM-01-1', {}).positions };
    const position = bare.positions['QM-01-1'];
    if (!position) throw new Error('no such position in the demo plant');
    const { recordedLength_m: _a, oldBeltLength_m: _b, ...unknown } = position;
    const made = spliceCard({ ...bare, positions: { ...bare.positions, [unknown.id]: unknown } }, unknown.id, { now });
    expect(made.missing).toContain('loop-length');
    expect(made.lengths).toBeUndefined();
    expect(made.time.value).toBeGreaterThan(0);
  });

  it('[CARD-32] pulleys that make no loop are named, and record and old belt still give a length', () => {
    const broken = Object.values(plant.pulleys).find(({ line, order }) => line === 'QM-04' && order === 2);
    if (!broken) throw new Error('no such pulley in the demo plant');
    const changed = { ...plant, pulleys: { ...plant.pulleys, [broken.id]: { ...broken, x_m: 0, y_m: 0 } } };
    const made = spliceCard(changed, 'QM-04-3', { now });
    expect(made.noPath?.code).toMatch(/pulleys-overlap|no-tangent|pulley-not-touched|belt-/);
    expect(made.noPath?.path).toMatch(/^pulleys\[/);
    expect(made.lengths?.endless.value).toBeGreaterThan(64);
    expect(made.path).toBeUndefined();
  });
});

describe('warnings', () => {
  it('[CARD-40] sources that differ beyond chance are reported and the range covers them all', () => {
    const changed = withThing('positions', 'QM-04-3', { recordedLength_m: 64.8 });
    const made = spliceCard(changed, 'QM-04-3', { now });
    expect(codes(made)).toContain('sources-disagree');
    expect(made.warnings[0]?.level).toBe('stop');
    expect(made.lengths?.endless.low).toBeLessThan(64.22);
    expect(made.lengths?.endless.high).toBeGreaterThan(64.8);
  });

  it('[CARD-41] an overdue press check stops the job; another press in date is taken instead', () => {
    const overdue = withThing('presses', 'P1', { checkedOn: '2024-01-01' });
    expect(codes(spliceCard(overdue, 'QM-04-3', { now, press: 'P1' }))).toContain('press-check-overdue');
    expect(codes(spliceCard(overdue, 'QM-04-3', { now }))).not.toContain('press-check-overdue');
  });

  it('[CARD-41] a check noted for a day to come stops the job and is no check in date', () => {
    const mistyped = withThing('presses', 'P1', { checkedOn: '2999-01-01' });
    expect(codes(spliceCard(mistyped, 'QM-04-3', { now, press: 'P1' }))).toContain('press-check-ahead');
    expect(spliceCard(mistyped, 'QM-04-3', { now }).press.press?.id).not.toBe('P1');
  });

  it('[CARD-42] a roll that is too short, an elongation out of the window, a narrow pulley', () => {
    const short = {
      ...plant,
      rolls: Object.fromEntries(Object.values(plant.rolls).map((r) => [r.id, { ...r, left_m: 1 }])),
    };
    expect(codes(spliceCard(short, 'QM-04-3', { now }))).toContain('roll-too-short');
    const tight = withThing('lines', 'QM-04', { setElongation: 0.05 });
    expect(codes(spliceCard(tight, 'QM-04-3', { now }))).toContain('elongation-over-window');
    const wide = withThing('lines', 'QM-04', { width_m: 0.5 });
    expect(codes(spliceCard(wide, 'QM-04-3', { now }))).toContain('belt-wider-than-pulley');
  });

  it('[CARD-43] a take-up without travel cannot take the ends in place: pull and travel missing are named', () => {
    const stuck = withThing('lines', 'QM-04', { takeUpReference_m: 0.05 });
    const made = spliceCard(stuck, 'QM-04-3', { now });
    expect(codes(made)).toContain('not-in-place');
    expect(made.takeUp.pullNeeded?.value).toBeCloseTo(2 * (made.takeUp.travelMissing?.value ?? 0), 6);
  });

  it('[CARD-44] stop comes before care', () => {
    const levels = card('QM-02-3').warnings.map(({ level }) => level);
    expect([...levels].sort((a, b) => (a === b ? 0 : a === 'stop' ? -1 : 1))).toEqual(levels);
  });
});

describe('bad questions', () => {
  it.each(['QM-99', '', '__proto__', 'constructor'])('[CARD-50] position "%s" is refused by name', (id) => {
    expect(() => card(id)).toThrow(Refusal);
  });

  it('[CARD-51] an unknown press is refused, not replaced', () => {
    expect(() => spliceCard(plant, 'QM-04-3', { now, press: 'P9' })).toThrow(/unknown-press/);
  });
});

describe('revision', () => {
  it('[CARD-60] the same inputs give the same revision at any hour; a changed length gives another', () => {
    const later = spliceCard(plant, 'QM-04-3', { now: '2026-11-25T05:00:00Z', people: 2 });
    expect(later.revision).toBe(card('QM-04-3').revision);
    const changed = spliceCard(withThing('lines', 'QM-04', { setElongation: 0.0091 }), 'QM-04-3', { now, people: 2 });
    expect(changed.revision).not.toBe(later.revision);
  });
});
