import type { Cells } from '../march/cells.ts';
import type { ContactSwitch } from '../stack/contact-switch.ts';
import type { Place } from '../stack/probe-place.ts';

/** Places as columns of numbers; all runs of a press share them. */
export interface PlaceTable {
  readonly count: number;
  /** How many of the places, from the first, have rates: the platens have none. */
  readonly fusing: number;
  readonly upper: Int32Array;
  readonly lower: Int32Array;
  /** Weight of the lower unknown. */
  readonly share: Float64Array;
  /** Places beside a contact that switches: their share changes with it. */
  readonly switched: readonly SwitchedPlace[];
  /** First and last unknown that a place with rates lies at. */
  readonly first: number;
  readonly last: number;
}

export interface SwitchedPlace {
  readonly place: number;
  readonly contact: ContactSwitch;
  readonly dryShare: number;
}

const platens = 2;

/**
 * Places as columns.
 *
 * @param cells - unknowns of the stack
 * @param places - where, the two platens last
 * @returns columns
 * @source derived: plain allocation
 */
export function placeTable(cells: Pick<Cells, 'count' | 'switches'>, places: readonly Place[]): PlaceTable {
  const fusing = places.length - platens;
  const own = places.slice(0, fusing);
  return {
    count: places.length,
    fusing,
    upper: Int32Array.from(places, ({ upper }) => upper),
    lower: Int32Array.from(places, ({ lower }) => lower),
    share: Float64Array.from(places, ({ share }) => share),
    switched: switchedPlaces(cells, places),
    first: own.reduce((least, { upper }) => Math.min(least, upper), cells.count - 1),
    last: own.reduce((most, { lower }) => Math.max(most, lower), 0),
  };
}

function switchedPlaces({ switches }: Pick<Cells, 'switches'>, places: readonly Place[]): SwitchedPlace[] {
  return places.flatMap(({ upper, share: dryShare }, place) =>
    switches
      .filter((contact) => contact.upper === upper && dryShare !== 0)
      .map((contact) => ({ place, contact, dryShare })),
  );
}
