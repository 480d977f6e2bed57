import { computeInRange } from '../worked/compute-in-range.ts';
import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';

const bagWidth = { kind: 'shortLength', meaning: 'bagWidth' } as const;
const beltWidth = { kind: 'shortLength', meaning: 'beltWidth' } as const;
const stripsWidth = { kind: 'shortLength', meaning: 'stripsWidth' } as const;
const gauge = { kind: 'pressure', meaning: 'gaugePressure' } as const;
const onBelt = { kind: 'pressure', meaning: 'beltPressure' } as const;
const width_m = [0.001, 5] as const;
const strips_m = [0, 5] as const;
const pressure_Pa = [0, 5e6] as const;

export const beltPressureRow = workedFormula({
  id: 'belt-pressure',
  expression: 'p = pg * wb / min(b + ws, wb)',
  result: { symbol: 'p', ...onBelt },
  symbols: { pg: gauge, wb: bagWidth, b: beltWidth, ws: stripsWidth },
  compute: ({ pg, wb, b, ws }) => (pg * wb) / Math.min(b + ws, wb),
  range: { pg: pressure_Pa, wb: width_m, b: width_m, ws: strips_m },
  source: 'derived: the force of the bag spreads over whatever carries it at the same height',
  examples: [
    {
      inputs: { pg: 2e5, wb: 0.11, b: 0.05, ws: 0 },
      expected: 4.4e5,
      tolerance: 1e-6,
      evidence: 'practice',
      source: 'common practice, no source: 2 bar on a 110 mm bag is 4.4 bar on a lone 50 mm belt',
    },
    {
      inputs: { pg: 2e5, wb: 0.11, b: 0.05, ws: 0.06 },
      expected: 2e5,
      tolerance: 1e-6,
      evidence: 'practice',
      source: 'common practice, no source: with edge strips of equal height that fill the bag it is the gauge’s 2 bar',
    },
    {
      inputs: { pg: 2.2e5, wb: 0.11, b: 0.06, ws: 0 },
      expected: 4.0e5,
      tolerance: 0.05e5,
      evidence: 'practice',
      source: 'common practice, no source: 2.2 bar with strips is 4.0 bar on a 60 mm belt without them',
    },
  ],
});

export const gaugePressureRow = workedFormula({
  id: 'gauge-pressure',
  expression: 'pg = p * min(b + ws, wb) / wb',
  result: { symbol: 'pg', ...gauge },
  symbols: { p: onBelt, wb: bagWidth, b: beltWidth, ws: stripsWidth },
  compute: ({ p, wb, b, ws }) => (p * Math.min(b + ws, wb)) / wb,
  range: { p: pressure_Pa, wb: width_m, b: width_m, ws: strips_m },
  source: 'derived: belt-pressure solved for the gauge',
  examples: [
    {
      inputs: { p: 4.4e5, wb: 0.11, b: 0.05, ws: 0 },
      expected: 2e5,
      tolerance: 1e-6,
      evidence: 'derived',
      source: '4.4 bar * 50 / 110',
    },
  ],
});

/** What the gauge of a press shows and what the belt feels. */
export const bagPressureFormulas: readonly WorkedFormula[] = [beltPressureRow, gaugePressureRow];

export interface BagPressureInput {
  readonly gaugePressure_Pa: number;
  readonly bagWidth_m: number;
  readonly beltWidth_m: number;
  /** Width of the edge strips of belt height beside the belt, both together. */
  readonly stripsWidth_m: number;
}

/**
 * Pressure on the belt under a bag whose force spreads evenly over belt and edge strips of equal height.
 * p = p_g w_bag / min(b + w_strips, w_bag).
 *
 * @param input.gaugePressure_Pa - pressure in the bag over ambient [Pa], 0 to 5e6
 * @param input.bagWidth_m - width of the bag [m], 0.001 to 5
 * @param input.beltWidth_m - width of the belt [m], 0.001 to 5
 * @param input.stripsWidth_m - both edge strips together [m], 0 to 5
 * @returns pressure on the belt [Pa]
 * @throws not-finite, out-of-range
 * @validity rigid pressure plate; strips of the belt's height
 * @source common practice, no source; force balance
 * @verified PRESS-01 lone belt
 */
export function beltPressure_Pa(input: BagPressureInput): number {
  return computeInRange(
    beltPressureRow,
    { pg: input.gaugePressure_Pa, wb: input.bagWidth_m, b: input.beltWidth_m, ws: input.stripsWidth_m },
    { pg: 'gaugePressure_Pa', wb: 'bagWidth_m', b: 'beltWidth_m', ws: 'stripsWidth_m' },
  );
}
