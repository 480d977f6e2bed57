import { type Cycle, type CycleInput, cycle } from '@loopwright/engine/press';
import { Refusal } from '@loopwright/engine/refusal';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { fusionUsed } from '../fusion-used.ts';
import { cycleFields } from '../press-fields.ts';
import { grades } from '../press-results.ts';
import { type Tools, topic } from '../topic.ts';

/** A map of 40 x 40 x 3 recipes; more is asked in parts. */
const mostCells = 4800;

const axis = (unit: string, description: string) => z.array(number(unit, description)).min(1).max(mostCells);

const map = z.strictObject({
  shift_K: axis('K', 'Added to both set points'),
  dwell_s: axis('s', 'Dwell'),
  pressure_Pa: z.exactOptional(axis('Pa', 'Pressure on the belt; without it that of the recipe')),
});

/** A recipe whose set point is not reached, or that never cools, is a cell without numbers, not the end of the map. */
const cellRefusals = ['set-point-not-reached', 'never-cools'];

interface MapInput extends Omit<CycleInput, 'probes' | 'times_s'> {
  readonly map: z.infer<typeof map>;
}

interface Cell {
  readonly shift_K: number;
  readonly dwell_s: number;
  readonly pressure_Pa: number;
}

export const cycleMapTopic = topic({
  id: 'cycle-map',
  about: 'Press cycles over a map of set points, dwells and pressures: when they open, what becomes of the splice',
  input: z.strictObject({ ...cycleFields, map }),
  output: z.strictObject({
    cells: z
      .array(
        z.strictObject({
          shift_K: result('K', 'Added to both set points'),
          dwell_s: result('s', 'Dwell'),
          pressure_Pa: result('Pa', 'Pressure on the belt'),
          status: z.string().meta({ description: 'ok, or why this recipe gives no cycle' }),
          grade: z.nullable(z.enum(grades)),
          ready_s: result('s', 'Dwell begins'),
          open_s: result('s', 'Press opens'),
          bondMin: result('1', 'Least bond'),
          fillMin_m: result('m', 'Least fill'),
          fillMax_m: result('m', 'Most fill'),
          molarMassShareMin: result('1', 'Least molar mass left'),
          max_degC: result('degC', 'Hottest in the belt'),
        }),
      )
      .meta({ description: 'Pressure by pressure, in it shift by shift, in it dwell by dwell' }),
  }),
  formulas: [],
  run: (input: MapInput, tools: Tools) => ({ cells: cellsOf(input, tools), used: usedBy(input) }),
  worked: () => [],
});

function usedBy({ map: { pressure_Pa }, recipe, start_degC, ambient_degC, fusion }: MapInput): Record<string, unknown> {
  return {
    ...(pressure_Pa === undefined && { 'map.pressure_Pa': [recipe.pressure_Pa] }),
    ...(start_degC === undefined && { start_degC: ambient_degC }),
    ...fusionUsed(fusion),
  };
}

function cellsOf({ map: axes, ...base }: MapInput, { progress }: Tools) {
  const { shift_K: shifts, dwell_s: dwells, pressure_Pa: pressures = [base.recipe.pressure_Pa] } = axes;
  const count = shifts.length * dwells.length * pressures.length;
  if (count > mostCells) throw new Refusal('too-many', 'map', { count, max: mostCells });
  const cells = pressures.flatMap((pressure_Pa) =>
    shifts.flatMap((shift_K) => dwells.map((dwell_s): Cell => ({ shift_K, dwell_s, pressure_Pa }))),
  );
  return cells.map((cell, i) => {
    progress?.(i, count);
    return { ...cell, ...cellResult(base, cell) };
  });
}

function cellResult(base: Omit<MapInput, 'map'>, { shift_K, dwell_s, pressure_Pa }: Cell) {
  const { top_degC, bottom_degC } = base.recipe;
  const shifted = { top_degC: top_degC + shift_K, bottom_degC: bottom_degC + shift_K };
  const recipe = { ...base.recipe, ...shifted, dwell_s, pressure_Pa };
  try {
    const run = cycle({ ...base, recipe, probes: [] });
    return run.status === 'ok' ? numbersOf(run) : noNumbers(run.reason);
  } catch (cause) {
    if (!(cause instanceof Refusal) || !cellRefusals.includes(cause.code)) throw cause;
    return noNumbers(cause.code);
  }
}

function numbersOf({ marks, belt, grade }: Cycle) {
  const { bondMin, fillMin_m, fillMax_m, molarMassShareMin, max_degC } = belt;
  const { ready_s, open_s } = marks;
  return { status: 'ok', grade, ready_s, open_s, bondMin, fillMin_m, fillMax_m, molarMassShareMin, max_degC };
}

function noNumbers(status: string) {
  const nothing = { ready_s: null, open_s: null, bondMin: null, fillMin_m: null, fillMax_m: null };
  return { status, grade: null, ...nothing, molarMassShareMin: null, max_degC: null };
}
