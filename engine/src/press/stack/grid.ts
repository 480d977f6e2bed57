import { type EnthalpyTable, enthalpyTable } from './enthalpy-table.ts';
import type { Layer } from './layer.ts';

/** Cells of one layer; cell numbers count from 1, since 0 is the upper platen. */
export interface LayerCells {
  readonly first: number;
  readonly count: number;
  readonly cell_m: number;
}

/** A stack cut into cells, with unknown 0 the upper platen, then the cells, last the lower platen. */
export interface Grid {
  /** Unknowns: cells and both platens. */
  readonly count: number;
  readonly layers: readonly LayerCells[];
  /** Thickness of each cell; 0 for platens. */
  readonly cell_m: Float64Array;
  /** Half a cell over its conductivity at 25 degC; 0 for platens. */
  readonly half_m2K_W: Float64Array;
  readonly conductivitySlope_1_K: Float64Array;
  /** Resistance of the contact below unknown i; 0 inside a layer. */
  readonly contact_m2K_W: Float64Array;
  /** Mass per area. */
  readonly mass_kg_m2: Float64Array;
  /** Specific heat where it does not change with temperature. */
  readonly specificHeat_J_kgK: Float64Array;
  readonly tabled: readonly TabledRange[];
  /** True when a conductivity changes with temperature. */
  readonly slopes: boolean;
}

/** Neighbouring cells whose temperature comes from a table of enthalpy. */
export interface TabledRange {
  readonly from: number;
  readonly to: number;
  readonly table: EnthalpyTable;
}

/**
 * Cuts a stack of layers into equal cells per layer.
 *
 * @param layers - layers from the top
 * @param contacts_W_m2K - one per interface from the upper platen down, null = perfect [W/(m2*K)]
 * @param cells - number of cells of each layer [1], >= 1
 * @returns cells, resistances, masses and tables of enthalpy
 * @source cell-centred finite volumes
 * @verified STACK-03 steady composite
 */
export function stackGrid(
  layers: readonly Layer[],
  contacts_W_m2K: readonly (number | null)[],
  cells: readonly number[],
): Grid {
  const count = 2 + cells.reduce((sum, one) => sum + one, 0);
  const arrays = {
    cell_m: new Float64Array(count),
    half_m2K_W: new Float64Array(count),
    conductivitySlope_1_K: new Float64Array(count),
    contact_m2K_W: new Float64Array(count),
    mass_kg_m2: new Float64Array(count),
    specificHeat_J_kgK: new Float64Array(count),
  };
  const placed: LayerCells[] = [];
  const tabled: TabledRange[] = [];
  const tables = new Map<string, EnthalpyTable>();
  let first = 1;
  arrays.contact_m2K_W[0] = resistance(contacts_W_m2K[0]);
  layers.forEach((layer, index) => {
    const own = { first, count: cells[index] ?? 1, cell_m: layer.thickness_m / (cells[index] ?? 1) };
    fillLayer(arrays, layer, own);
    arrays.contact_m2K_W[first + own.count - 1] = resistance(contacts_W_m2K[index + 1]);
    if (changesWithTemperature(layer)) {
      tabled.push({ from: first, to: first + own.count, table: tableOf(layer, tables) });
    }
    placed.push(own);
    first += own.count;
  });
  const slopes = layers.some(({ conductivitySlope_1_K: slope = 0 }) => slope !== 0);
  return { count, layers: placed, ...arrays, tabled, slopes };
}

function resistance(contact_W_m2K: number | null | undefined): number {
  return contact_W_m2K === null || contact_W_m2K === undefined ? 0 : 1 / contact_W_m2K;
}

function fillLayer(
  arrays: Pick<Grid, 'cell_m' | 'half_m2K_W' | 'conductivitySlope_1_K' | 'mass_kg_m2' | 'specificHeat_J_kgK'>,
  layer: Layer,
  { first, count, cell_m }: LayerCells,
): void {
  const last = first + count;
  arrays.cell_m.fill(cell_m, first, last);
  arrays.half_m2K_W.fill((0.5 * cell_m) / layer.conductivity_W_mK, first, last);
  arrays.conductivitySlope_1_K.fill(layer.conductivitySlope_1_K ?? 0, first, last);
  arrays.mass_kg_m2.fill(layer.density_kg_m3 * cell_m, first, last);
  arrays.specificHeat_J_kgK.fill(layer.specificHeat_J_kgK, first, last);
}

function changesWithTemperature({ specificHeatSlope_J_kgK2: slope = 0, melt }: Layer): boolean {
  return slope !== 0 || (melt !== undefined && melt.heat_J_kg !== 0);
}

/** Both covers of a belt share one table. */
function tableOf(layer: Layer, tables: Map<string, EnthalpyTable>): EnthalpyTable {
  const { specificHeat_J_kgK, specificHeatSlope_J_kgK2, specificHeatCap_J_kgK, melt } = layer;
  const key = [
    specificHeat_J_kgK,
    specificHeatSlope_J_kgK2,
    specificHeatCap_J_kgK,
    melt?.heat_J_kg,
    melt?.centre_degC,
    melt?.width_K,
  ].join();
  const known = tables.get(key) ?? enthalpyTable(layer);
  tables.set(key, known);
  return known;
}
