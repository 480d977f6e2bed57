import { type BeltPath, beltPath } from '@loopwright/engine/loop';
import { describe, expect, it } from 'vitest';
import { pathInput } from '../../src/path-input.ts';
import { linePulleys } from '../../src/survey/line-pulleys.ts';
import type { Belt } from '../../src/things/belt.ts';
import type { Line, Pulley } from '../../src/things/line.ts';
import { readFolder } from './read-folder.ts';

// What the demo plant is designed to: its figures are given, its coordinates were solved for them by another program.
const design = {
  'QM-01': { loop_mm: 44_600, positions: 8 },
  'QM-02': { loop_mm: 37_400, positions: 14 },
  'QM-03': { loop_mm: 18_600, positions: 12 },
  'QM-04': { loop_mm: 64_800, positions: 6 },
  'QM-05': { loop_mm: 24_600, positions: 10 },
  'QM-06': { loop_mm: 46_000, positions: 10 },
} as const;
type LineId = keyof typeof design;
const lineIds = Object.keys(design) as LineId[];

const reading = readFolder('demo');
const gravity_m_s2 = 9.80665;

interface DemoLine {
  readonly line: Line;
  readonly belt: Belt;
  readonly pulleys: readonly Pulley[];
  readonly drive: number;
  readonly takeUp: number;
  /** Path with the take-up at a travel [m]; at its reference when left out. */
  at(travel_m?: number): BeltPath;
}

function demoLine(id: string): DemoLine {
  const { plant } = reading;
  const line = plant?.lines[id];
  const belt = line && plant?.belts[line.belt];
  if (!plant || !line || !belt) throw new Error(`demo has no line ${id}`);
  const { pulleys } = linePulleys(plant, id);
  const takeUp = pulleys.findIndex((pulley) => pulley.role === 'take-up');
  const at = (travel_m = line.takeUpReference_m): BeltPath => {
    const by = travel_m - line.takeUpReference_m;
    const moved = (p: Pulley): Pulley => ({ ...p, x_m: p.x_m + by * line.takeUpX, y_m: p.y_m + by * line.takeUpY });
    return beltPath(
      pathInput(
        pulleys.map((p, i) => (i === takeUp ? moved(p) : p)),
        belt,
      ),
    );
  };
  return { line, belt, pulleys, takeUp, at, drive: pulleys.findIndex((pulley) => pulley.role === 'drive') };
}

const degrees = (angle_rad: number | undefined): number => ((angle_rad ?? Number.NaN) * 180) / Math.PI;
const at = (values: readonly number[], index: number): number => values[index] ?? Number.NaN;

/** Share of the loop from the middle of the carrying strand to the middle of the drive, in travel direction. */
function kappa({ drive, at: pathAt }: DemoLine): number {
  const { spans_m, wraps_rad, neutralRadii_m, length_m } = pathAt();
  const arc = (i: number): number => at(wraps_rad, i) * at(neutralRadii_m, i);
  let tight = at(spans_m, spans_m.length - 1) / 2 + arc(drive) / 2;
  for (let i = 0; i < drive; i += 1) tight += arc(i) + at(spans_m, i);
  return tight / length_m;
}

describe('the demo plant', () => {
  it('[DEMO-01] its folder has no error; what deserves a look is the small snub of QM-05 and nothing else', () => {
    expect(reading.problems.filter((problem) => problem.level === 'error')).toEqual([]);
    expect(reading.notes).toEqual([]);
    const looks = reading.problems.map((problem) => `${problem.data['id']} ${problem.code}`);
    expect(looks.length).toBeGreaterThan(0);
    for (const look of looks) expect(look).toMatch(/^QM-05\.7 (pulley|counter-bend)-under-limit$/);
  });

  it('[DEMO-02] six lines, sixty positions, numbered from 1 on each line', () => {
    const positions = Object.values(reading.plant?.positions ?? {});
    expect(positions).toHaveLength(60);
    expect(Object.keys(reading.plant?.lines ?? {})).toEqual(lineIds);
    for (const id of lineIds) {
      const numbers = positions.filter((position) => position.line === id).map((position) => position.number);
      expect(numbers).toEqual(Array.from({ length: design[id].positions }, (_, i) => i + 1));
    }
  });

  it.each(lineIds)('[DEMO-03] %s: the coordinates give the loop length within 0.2 mm', (id) => {
    expect(Math.abs(demoLine(id).at().length_m * 1000 - design[id].loop_mm)).toBeLessThan(0.2);
  });

  it.each(lineIds)('[DEMO-04] %s: the drive is wrapped 210 degrees, the strands of the take-up are parallel', (id) => {
    const { drive, takeUp, at: pathAt } = demoLine(id);
    const { wraps_rad } = pathAt();
    expect(Math.abs(degrees(wraps_rad[drive]) - 210)).toBeLessThan(0.5);
    expect(Math.abs(degrees(wraps_rad[takeUp]) - 180)).toBeLessThan(0.1);
  });

  it.each(lineIds)('[DEMO-05] %s: the belt runs with the take-up anywhere in its stroke, 2 mm of loop a mm', (id) => {
    const { line, at: pathAt } = demoLine(id);
    const slack = pathAt(0).length_m;
    const full = pathAt(line.takeUpStroke_m).length_m;
    expect(full - slack).toBeCloseTo(2 * line.takeUpStroke_m, 5);
  });

  it('[DEMO-06] only the story snub is under the limit of its belt', () => {
    const small = lineIds.flatMap((id) => {
      const { belt, pulleys } = demoLine(id);
      const limit = (p: Pulley): number => belt.minPulley_m * (p.turn === 'right' ? 1.25 : 1);
      return pulleys.filter((p) => p.diameter_m < limit(p)).map((p) => p.id);
    });
    expect(small).toEqual(['QM-05.7']);
  });

  it('[DEMO-07] QM-02: slips at its 0.55 %, and 0.77 % is where it just does not', () => {
    const demo = demoLine('QM-02');
    const { line, belt } = demo;
    const pull_N = line.lumpedFriction * (line.load_kg_m + line.rollers_kg_m) * line.bed_m * gravity_m_s2;
    const grip = Math.exp(belt.friction * at(demo.at().wraps_rad, demo.drive));
    // Mean tension at which the drive slips, for even tension and for fixed centres; centrifugal pull left out.
    const even_N = (pull_N * (grip + 1)) / (2 * (grip - 1));
    const fixed_N = pull_N * (1 / (grip - 1) + kappa(demo));
    const elongation = (force_N: number): number => force_N / (belt.k1_N_mm_pct * line.width_m * 1000) / 100;
    expect(Math.abs(pull_N - 460)).toBeLessThan(0.5);
    expect(elongation(even_N) * 100).toBeCloseTo(0.77, 2);
    expect(elongation(fixed_N) * 100).toBeCloseTo(0.77, 2);
    expect(line.setElongation).toBeLessThan(elongation(fixed_N));
  });

  it.each(lineIds.filter((id) => id !== 'QM-02'))('[DEMO-08] %s: does not slip under its load', (id) => {
    const demo = demoLine(id);
    const { line, belt } = demo;
    const pull_N = line.lumpedFriction * (line.load_kg_m + line.rollers_kg_m) * line.bed_m * gravity_m_s2;
    const friction = line.wet ? belt.frictionWet : belt.friction;
    const grip = Math.exp(friction * at(demo.at().wraps_rad, demo.drive));
    const mean_N = belt.k1_N_mm_pct * line.setElongation * 100 * line.width_m * 1000;
    expect((mean_N * (grip - 1)) / (1 + kappa(demo) * (grip - 1))).toBeGreaterThan(1.1 * pull_N);
  });

  it('[DEMO-09] QM-04: 64 222 endless, 64 302 tip to tip, 64 352 square; 289 mm of travel for the stretch', () => {
    const { line, belt, at: pathAt } = demoLine('QM-04');
    const endless_mm = (pathAt().length_m * 1000) / (1 + line.setElongation);
    const die = reading.plant?.dies['die-10x80'];
    expect(Math.round(endless_mm)).toBe(64_222);
    expect(Math.round(endless_mm + belt.fingerLength_m * 1000)).toBe(64_302);
    expect(Math.round(endless_mm + belt.fingerLength_m * 1000 + 2000 * (die?.waste_m ?? Number.NaN))).toBe(64_352);
    expect(Math.round((line.setElongation * endless_mm) / 2)).toBe(289);
    expect(pathAt(0).length_m * 1000 + line.fitSlack_m * 1000).toBeLessThan(endless_mm);
  });

  it('[DEMO-10] QM-05: a re-splice needs 106 + 116 + 12 = 234 mm of travel, and the take-up stands at 198 of 270', () => {
    const { line, belt, at: pathAt } = demoLine('QM-05');
    const endless_mm = (pathAt().length_m * 1000) / (1 + line.setElongation);
    const trim_mm = 25;
    const fingers_mm = ((belt.fingerLength_m * 1000 + trim_mm) * 2 * (1 + line.setElongation)) / 2;
    const stretch_mm = (line.setElongation * endless_mm) / 2;
    const slack_mm = (line.fitSlack_m * 1000) / 2;
    expect([fingers_mm, stretch_mm, slack_mm].map(Math.round)).toEqual([106, 116, 12]);
    expect(Math.round(fingers_mm + stretch_mm + slack_mm)).toBe(234);
    expect(line.takeUpReference_m).toBeCloseTo(0.198, 9);
    expect(line.takeUpStroke_m).toBeCloseTo(0.27, 9);
    expect(reading.plant?.positions['QM-05-4']?.takeUp_m).toBeCloseTo(0.198, 9);
  });

  it('[DEMO-11] QM-04-3: survey, record and old belt agree within what each can know', () => {
    const torn = reading.plant?.positions['QM-04-3'];
    if (!torn?.recordedLength_m || !torn.oldBeltLength_m) throw new Error('the torn belt has lost its measurements');
    const { line, pulleys, at: pathAt } = demoLine('QM-04');
    const ends_m = Math.hypot(...pulleys.map((p) => (p.role === 'snub' ? 0 : 2 * p.uncertainty_m)));
    const sources = [
      [pathAt().length_m / (1 + line.setElongation), ends_m],
      [torn.recordedLength_m, torn.recordedUncertainty_m ?? Number.NaN],
      [torn.oldBeltLength_m / (1 + (torn.oldBeltSet ?? 0)), torn.oldBeltUncertainty_m ?? Number.NaN],
    ] as const;
    for (const [a, ua] of sources)
      for (const [b, ub] of sources) expect(Math.abs(a - b)).toBeLessThan(Math.hypot(ua, ub));
  });

  it('[DEMO-12] counted revolutions fit the days since fitting: v * 3600 * h / L a day', () => {
    for (const [id, now] of [
      ['QM-04-3', '2026-11-25T02:04:00Z'],
      ['QM-05-6', '2026-11-25T02:04:00Z'],
    ] as const) {
      const position = reading.plant?.positions[id];
      if (!position?.fittedOn || !position.revolutions) throw new Error(`${id} lacks its count`);
      const { line, at: pathAt } = demoLine(position.line);
      const days = (Date.parse(now) - Date.parse(position.fittedOn)) / 86_400_000;
      const expected = (line.speed_m_s * 3600 * line.hoursPerDay * days) / pathAt().length_m;
      expect(Math.abs(position.revolutions / expected - 1)).toBeLessThan(0.01);
    }
    const notes = Object.values(reading.plant?.positions ?? {}).map((position) => position.note ?? '');
    const failed = notes.flatMap((note) => /failed at (\d+) thousand/.exec(note)?.[1] ?? []).map(Number);
    expect(failed.sort((a, b) => a - b)).toEqual([88, 97, 108, 121, 133]);
  });

  it('[DEMO-13] Thistle-22 has no recipe, every other belt has one on North; belts and recipes are examples', () => {
    const { belts = {}, recipes = {} } = reading.plant ?? {};
    const known = Object.values(recipes)
      .filter((recipe) => recipe.press === 'P1')
      .map((recipe) => recipe.belt);
    expect(Object.keys(belts).filter((id) => !known.includes(id))).toEqual(['Thistle-22']);
    for (const thing of [...Object.values(belts), ...Object.values(recipes)]) expect(thing.source).toBe('example');
  });
});
