import { type CycleMapInput, cycleMap, type MapPoint } from '@loopwright/engine/press';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { fusionUsed } from '../fusion-used.ts';
import { cycleFields } from '../press-fields.ts';
import { grades } from '../press-results.ts';
import { type Tools, topic } from '../topic.ts';

const axis = (unit: string, description: string) => z.array(number(unit, description)).min(1);

const map = z.strictObject({
  shift_K: axis(
    'K',
    'Added to both set points: of a recipe with steps, to those of the last ramp before its last dwell',
  ),
  dwell_s: axis('s', 'Dwell, ascending; of a recipe with steps its last dwell'),
  pressure_Pa: z.exactOptional(axis('Pa', 'Pressure on the belt that the recipe begins with; without it its own')),
});

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
      .meta({ description: 'Shift by shift, in it dwell by dwell, in it pressure by pressure; at most 4,800' }),
  }),
  formulas: [],
  run: async (input: CycleMapInput, tools: Tools) => ({
    cells: await (tools.mapCycles ?? onThisThread)(input, tools),
    used: usedBy(input),
  }),
  worked: () => [],
});

function usedBy({
  map: { pressure_Pa },
  recipe,
  start_degC,
  ambient_degC,
  fusion,
}: CycleMapInput): Record<string, unknown> {
  return {
    ...(pressure_Pa === undefined && { 'map.pressure_Pa': [recipe.pressure_Pa] }),
    ...(start_degC === undefined && { start_degC: ambient_degC }),
    ...fusionUsed(fusion),
  };
}

async function onThisThread(input: CycleMapInput, { progress }: Pick<Tools, 'progress'>): Promise<MapPoint[]> {
  const cells: MapPoint[] = [];
  const shifts = input.map.shift_K.length;
  for (const points of cycleMap(input)) {
    cells.push(...points);
    progress?.(cells.length, shifts * points.length);
  }
  return cells;
}
