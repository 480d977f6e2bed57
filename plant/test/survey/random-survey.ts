import fc from 'fast-check';
import { type Survey, type SurveyLayout, surveySchema } from '../../src/things/survey.ts';

/** A group of three pulleys under the bed as somebody with a drawing knows it. */
export interface KnownGroup {
  readonly x_m: number;
  readonly y_m: number;
  readonly diameter_m: number;
  readonly snubY_m: number;
  readonly snubDiameter_m: number;
  readonly snubXs_m: readonly [before: number, after: number];
}

/** Known coordinates of a whole line; the belt runs it without touching anything it should not. */
export interface KnownLine {
  readonly layout: SurveyLayout;
  readonly endX_m: number;
  readonly endDiameters_m: readonly [infeed: number, discharge: number];
  readonly drive?: KnownGroup;
  readonly takeUp?: KnownGroup;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const group = (x: fc.Arbitrary<number>): fc.Arbitrary<KnownGroup> =>
  fc
    .record({
      x_m: x,
      depth: between(0.35, 0.8),
      diameter_m: between(0.08, 0.2),
      snubDiameter_m: between(0.03, 0.08),
      gaps: fc.tuple(between(0.01, 0.05), between(0.01, 0.05)),
    })
    .map(({ x_m, depth, diameter_m, snubDiameter_m, gaps: [left, right] }) => ({
      x_m,
      y_m: -0.12 - depth,
      diameter_m,
      snubY_m: -0.12,
      snubDiameter_m,
      snubXs_m: [
        x_m - (diameter_m + snubDiameter_m) / 2 - left,
        x_m + (diameter_m + snubDiameter_m) / 2 + right,
      ] as const,
    }));

/** Lines of a layout, 6 to 40 m long, drive in the left half and take-up in the right half. */
export function knownLine(layout: SurveyLayout): fc.Arbitrary<KnownLine> {
  return between(6, 40).chain((endX_m) =>
    fc.record({
      layout: fc.constant(layout),
      endX_m: fc.constant(endX_m),
      endDiameters_m: fc.tuple(between(0.06, 0.14), between(0.06, 0.14)),
      ...(layout.startsWith('bed-drive') ? { drive: group(between(1, endX_m / 2 - 1)) } : {}),
      ...(layout.endsWith('bed-take-up') ? { takeUp: group(between(endX_m / 2 + 1, endX_m - 1)) } : {}),
    }),
  );
}

/** What a tape without error would read on a line with known coordinates. */
export function surveyOf(known: KnownLine): Survey {
  return surveySchema.parse({
    id: 'survey-1',
    source: 'measured',
    line: 'L1',
    layout: known.layout,
    infeedDiameter_m: known.endDiameters_m[0],
    ...(known.drive ? groupReadings('drive', known.drive) : {}),
    ...(known.takeUp ? groupReadings('takeUp', known.takeUp) : {}),
    endDistance_m: known.endX_m,
    dischargeDiameter_m: known.endDiameters_m[1],
  });
}

function groupReadings(name: 'drive' | 'takeUp', known: KnownGroup): Record<string, number> {
  return {
    [`${name}Distance_m`]: known.x_m,
    [`${name}Drop_m`]: -known.y_m,
    [`${name}Diameter_m`]: known.diameter_m,
    [`${name}SnubBefore_m`]: known.x_m - known.snubXs_m[0],
    [`${name}SnubAfter_m`]: known.snubXs_m[1] - known.x_m,
    [`${name}SnubDrop_m`]: -known.snubY_m,
    [`${name}SnubDiameter_m`]: known.snubDiameter_m,
  };
}

/** Centres and diameters of a known line in travel order: x, y, diameter. */
export function knownPulleys(known: KnownLine): readonly (readonly [number, number, number])[] {
  const of = (g: KnownGroup | undefined) =>
    g
      ? ([
          [g.snubXs_m[0], g.snubY_m, g.snubDiameter_m],
          [g.x_m, g.y_m, g.diameter_m],
          [g.snubXs_m[1], g.snubY_m, g.snubDiameter_m],
        ] as const)
      : [];
  const [infeed, discharge] = known.endDiameters_m;
  return [[0, 0, infeed], ...of(known.drive), ...of(known.takeUp), [known.endX_m, 0, discharge]];
}

export const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
