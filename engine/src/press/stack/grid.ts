import { type ContactSwitch, contactSwitches } from './contact-switch.ts';
import type { HeatCurve } from './enthalpy.ts';
import { enthalpyTable, sameCurve } from './enthalpy-table.ts';
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
  /** Per unknown, with platens of no thickness and no mass. */
  readonly parts: readonly GridPart[];
  /** Tables of enthalpy, one after the other. */
  readonly tables: Float64Array;
  readonly switches: readonly ContactSwitch[];
}

/** One unknown of a grid. */
export interface GridPart {
  readonly cell_m: number;
  /** Half a cell over its conductivity at 25 degC. */
  readonly half_m2K_W: number;
  /** Resistance of the contact below it; 0 inside a layer. */
  readonly contact_m2K_W: number;
  readonly conductivitySlope_1_K: number;
  readonly mass_kg_m2: number;
  readonly curve: HeatCurve;
  /** Where its table of enthalpy begins, or -1 where the specific heat does not change. */
  readonly table: number;
}

/**
 * Cuts a stack of layers into equal cells per layer.
 *
 * @param layers - layers from the top
 * @param contacts_W_m2K - one per interface from the upper platen down, null = perfect [W/(m2*K)]
 * @param cells - number of cells of each layer [1], >= 1
 * @param ends - heat capacity per area of both platens [J/(m2*K)] as a curve of 1 kg/m2
 * @param wetted_W_m2K - contacts with the belt's face molten; null = does not switch [W/(m2*K)]
 * @returns cells, resistances, masses and tables of enthalpy
 * @source cell-centred finite volumes
 * @verified STACK-03 steady composite
 */
export function stackGrid(
  layers: readonly Layer[],
  contacts_W_m2K: readonly (number | null)[],
  cells: readonly number[],
  ends: { readonly top: HeatCurve; readonly bottom: HeatCurve },
  wetted_W_m2K: readonly (number | null)[] = [],
): Grid {
  const shelf: Shelf = { tables: [], length: 0 };
  const parts: GridPart[] = [platenPart(ends.top, contacts_W_m2K[0], shelf)];
  const placed: LayerCells[] = [];
  layers.forEach((layer, index) => {
    const count = cells[index] ?? 1;
    const own = { first: parts.length, count, cell_m: layer.thickness_m / count };
    placed.push(own);
    const part = layerPart(layer, own.cell_m, shelf);
    for (let i = 1; i < count; i += 1) parts.push(part);
    parts.push({ ...part, contact_m2K_W: resistance(contacts_W_m2K[index + 1]) });
  });
  parts.push(platenPart(ends.bottom, null, shelf));
  const tables = new Float64Array(shelf.length);
  for (const { at, table } of shelf.tables) tables.set(table, at);
  const above = [0, ...placed.map(({ first, count }) => first + count - 1)];
  const switches = contactSwitches(layers, contacts_W_m2K, wetted_W_m2K, above);
  return { count: parts.length, layers: placed, parts, tables, switches };
}

function resistance(contact_W_m2K: number | null | undefined): number {
  return contact_W_m2K === null || contact_W_m2K === undefined ? 0 : 1 / contact_W_m2K;
}

/** A platen counts per area: its mass is 1 kg/m2. */
function platenPart(curve: HeatCurve, contact_W_m2K: number | null | undefined, shelf: Shelf): GridPart {
  return {
    cell_m: 0,
    half_m2K_W: 0,
    contact_m2K_W: resistance(contact_W_m2K),
    conductivitySlope_1_K: 0,
    mass_kg_m2: 1,
    curve,
    table: tableStart(curve, shelf),
  };
}

function layerPart(layer: Layer, cell_m: number, shelf: Shelf): GridPart {
  return {
    cell_m,
    half_m2K_W: (0.5 * cell_m) / layer.conductivity_W_mK,
    contact_m2K_W: 0,
    conductivitySlope_1_K: layer.conductivitySlope_1_K ?? 0,
    mass_kg_m2: layer.density_kg_m3 * cell_m,
    curve: layer,
    table: tableStart(layer, shelf),
  };
}

/** Tables of a grid so far, by what they tabulate: both covers of a belt share one. */
interface Shelf {
  readonly tables: { readonly at: number; readonly curve: HeatCurve; readonly table: Float64Array }[];
  length: number;
}

function tableStart(curve: HeatCurve, shelf: Shelf): number {
  const { specificHeatSlope_J_kgK2: slope = 0, melt } = curve;
  if (slope === 0 && (melt === undefined || melt.heat_J_kg === 0)) return -1;
  const known = shelf.tables.find((one) => sameCurve(one.curve, curve));
  if (known !== undefined) return known.at;
  const at = shelf.length;
  const table = enthalpyTable(curve);
  shelf.tables.push({ at, curve, table });
  shelf.length += table.length;
  return at;
}
