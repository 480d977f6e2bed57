import { type FusionParameters, fusionParameters } from '../../fusion/parameters.ts';
import type { Cells } from '../march/cells.ts';
import type { LossLaw } from '../march/loss-law.ts';
import { endCurve, startCells } from '../march/slab.ts';
import type { HeatCurve } from '../stack/enthalpy.ts';
import { type Grid, stackGrid } from '../stack/grid.ts';
import { type Place, probePlace } from '../stack/probe-place.ts';
import { cellCounts } from './cell-counts.ts';
import type { CycleInput, Platen } from './cycle-input.ts';
import { facesLaw } from './faces-law.ts';
import { type PlaceTable, placeTable } from './place-table.ts';
import { type RateTable, rateTable } from './rate-table.ts';

/** What `preparePress` makes; many runs may share it. */
export interface PreparedPress {
  /** At their start temperature. */
  readonly cells: Cells;
  readonly fusion: FusionParameters;
  readonly rates: RateTable;
  readonly places: readonly Place[];
  readonly placeTable: PlaceTable;
  readonly beltPlaces: number;
  /** Losses of the platens' bare faces. */
  readonly laws: { readonly top: LossLaw | undefined; readonly bottom: LossLaw | undefined };
}

/** What of a cycle a prepared press depends on: neither its recipe nor its supply nor its heaters. */
type PressParts = Pick<
  CycleInput,
  'layers' | 'contacts_W_m2K' | 'contactsWetted_W_m2K' | 'ambient_degC' | 'start_degC' | 'probes' | 'fusion'
> & { readonly top: PlatenParts; readonly bottom: PlatenParts };

type PlatenParts = Pick<Platen, 'area_m2' | 'capacity_J_m2K' | 'capacitySlope_1_K' | 'faces'>;

/** Presses prepared last: a search asks for one and the same again and again. */
const prepared: { readonly of: unknown; readonly press: PreparedPress }[] = [];
const mostKept = 4;

/**
 * Everything of a cycle that does not depend on its recipe or its supply: cells, tables, places.
 *
 * @param input - checked input of a cycle
 * @param refine - odd factor on the number of cells [1]
 * @returns press with its stack; the same one for the same press
 * @source derived: plain look-up
 * @verified CYCLE-05 halved cells
 */
export function preparePress(input: CycleInput, refine = 1): PreparedPress {
  const parts = partsOf(input);
  const of = { parts, refine };
  const known = prepared.find((one) => alike(one.of, of));
  if (known !== undefined) return known.press;
  const press = prepare(parts, refine);
  if (prepared.length >= mostKept) prepared.shift();
  prepared.push({ of: copied(of), press });
  return press;
}

function partsOf(input: CycleInput): PressParts {
  const { layers, contacts_W_m2K, contactsWetted_W_m2K, ambient_degC, start_degC, probes, fusion, top, bottom } = input;
  const own = { layers, contacts_W_m2K, contactsWetted_W_m2K, ambient_degC, start_degC, probes, fusion };
  return { ...own, top: platenParts(top), bottom: platenParts(bottom) };
}

function platenParts({ area_m2, capacity_J_m2K, capacitySlope_1_K, faces }: Platen): PlatenParts {
  return { area_m2, capacity_J_m2K, capacitySlope_1_K, faces };
}

/** Plain data, number by number. */
function alike(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const [own, others] = [one as Readonly<Record<string, unknown>>, other as Readonly<Record<string, unknown>>];
  const names = Object.keys(own);
  if (names.length !== Object.keys(others).length) return false;
  for (const name of names) if (!alike(own[name], others[name])) return false;
  return true;
}

/** A copy of plain data: whoever asked may go on to change their own. */
function copied(one: unknown): unknown {
  if (Array.isArray(one)) return one.map(copied);
  if (typeof one !== 'object' || one === null) return one;
  return Object.fromEntries(Object.entries(one).map(([name, value]) => [name, copied(value)]));
}

function prepare(input: PressParts, refine: number): PreparedPress {
  const { layers, contacts_W_m2K, contactsWetted_W_m2K, top, bottom } = input;
  const cells = cellCounts(layers).map((count) => count * refine);
  const ends = { top: platenCurve(top), bottom: platenCurve(bottom) };
  const grid = stackGrid(layers, contacts_W_m2K, cells, ends, contactsWetted_W_m2K);
  const belt = beltPlaces(input, grid);
  const probes = input.probes.map(({ layer, fraction }) => probePlace(grid, layer, fraction));
  const platens = [
    { upper: 0, lower: 1, share: 0 },
    { upper: grid.count - 1, lower: grid.count - 2, share: 0 },
  ];
  const fusion = fusionParameters(input.fusion);
  const places = [...belt, ...probes, ...platens];
  const start = startCells(grid, input.start_degC ?? input.ambient_degC);
  const laws = { top: facesLaw(top, input.ambient_degC), bottom: facesLaw(bottom, input.ambient_degC) };
  return {
    cells: start,
    fusion,
    rates: rateTable(fusion),
    places,
    placeTable: placeTable(start, places),
    beltPlaces: belt.length,
    laws,
  };
}

function platenCurve({ capacity_J_m2K, capacitySlope_1_K = 0 }: PlatenParts): HeatCurve {
  return endCurve({ held: false, capacity_J_m2K, capacitySlope_1_K });
}

/** All cells of the belt and its two faces. */
function beltPlaces({ layers }: PressParts, grid: Grid): Place[] {
  const own = layers.flatMap((layer, index) => (layer.belt === true ? [index] : []));
  const places: Place[] = [];
  for (const index of own) {
    const { first, count } = grid.layers[index] ?? { first: 1, count: 0 };
    if (layers[index - 1]?.belt !== true) places.push(probePlace(grid, index, 0));
    for (let i = first; i < first + count; i += 1) places.push({ upper: i, lower: i + 1, share: 0 });
    if (layers[index + 1]?.belt !== true) places.push(probePlace(grid, index, 1));
  }
  return places;
}
