/** Both heaters behind one lead: what they draw depends on both, for the lead's drop is shared. See `heaterField`. */
export type Heaters = Float64Array;

/** Where the numbers of both heaters stand. */
export const heaterField = {
  VOLTS: 0,
  LEAD: 1,
  /** Conductance of each heater [S]: power over nominal voltage squared. */
  TOP_S: 2,
  BOTTOM_S: 3,
  AREA: 4,
  // What the latest shares of full power give: heat per area, current, power at the plug.
  TOP: 5,
  BOTTOM: 6,
  CURRENT: 7,
  PLUG: 8,
  // Their slopes by the share of each heater.
  TOP_BY_TOP: 9,
  TOP_BY_BOTTOM: 10,
  BOTTOM_BY_TOP: 11,
  BOTTOM_BY_BOTTOM: 12,
  PLUG_BY_TOP: 13,
  PLUG_BY_BOTTOM: 14,
  // At the step's start.
  START_TOP: 15,
  START_BOTTOM: 16,
  START_PLUG: 17,
  COUNT: 18,
} as const;

const { VOLTS, LEAD, TOP_S, BOTTOM_S, AREA, TOP, BOTTOM, CURRENT, PLUG, COUNT } = heaterField;
const { TOP_BY_TOP, TOP_BY_BOTTOM, BOTTOM_BY_TOP, BOTTOM_BY_BOTTOM, PLUG_BY_TOP, PLUG_BY_BOTTOM } = heaterField;
const { START_TOP, START_BOTTOM, START_PLUG } = heaterField;

/**
 * Two resistive heaters fed through one lead.
 *
 * @param own - supply voltage [V], loop resistance [ohm], conductance of each heater [S], platen area [m2]
 * @returns heaters, switched off
 * @source derived: Ohm's law
 */
export function makeHeaters(own: {
  readonly volts_V: number;
  readonly lead_ohm: number;
  readonly top_S: number;
  readonly bottom_S: number;
  readonly area_m2: number;
}): Heaters {
  const h = new Float64Array(COUNT);
  h.set([own.volts_V, own.lead_ohm, own.top_S, own.bottom_S, own.area_m2]);
  return h;
}

/**
 * Heat, current and power at the plug for two shares of full power.
 * g = u_t/R_t + u_b/R_b; V_h = V/(1 + R_lead*g); W = u*V_h^2/R; I = V_h*g.
 *
 * @param h - heaters, changed
 * @param top - share of full power of the upper heater u_t [1]
 * @param bottom - share of full power of the lower heater u_b [1]
 * @returns nothing
 * @source derived: Ohm's law; a share is the share of the time that the heater is on
 * @verified CYCLE-01 peak current
 */
export function driveHeaters(h: Heaters, top: number, bottom: number): void {
  const upper_S = top * (h[TOP_S] as number);
  const lower_S = bottom * (h[BOTTOM_S] as number);
  const volts_V = h[VOLTS] as number;
  const heater_V = volts_V / (1 + (h[LEAD] as number) * (upper_S + lower_S));
  const square = (heater_V * heater_V) / (h[AREA] as number);
  const current_A = heater_V * (upper_S + lower_S);
  h[TOP] = upper_S * square;
  h[BOTTOM] = lower_S * square;
  h[CURRENT] = current_A;
  h[PLUG] = volts_V * current_A;
}

/**
 * What the heaters give at the shares driven last as that of the step's start, and its slopes by each share.
 *
 * @param h - heaters, changed
 * @returns nothing
 * @source derived: derivatives of the formulas of `driveHeaters`
 */
export function slopeHeaters(h: Heaters): void {
  const top_S = h[TOP_S] as number;
  const bottom_S = h[BOTTOM_S] as number;
  const volts_V = h[VOLTS] as number;
  // V_h = V - R_lead*I.
  const heater_V = volts_V - (h[LEAD] as number) * (h[CURRENT] as number);
  const square = (heater_V * heater_V) / (h[AREA] as number);
  const sag = volts_V === 0 ? 0 : (2 * (h[LEAD] as number) * heater_V) / volts_V;
  const top = h[TOP] as number;
  const bottom = h[BOTTOM] as number;
  h[START_TOP] = top;
  h[START_BOTTOM] = bottom;
  h[START_PLUG] = h[PLUG] as number;
  h[TOP_BY_TOP] = top_S * (square - top * sag);
  h[TOP_BY_BOTTOM] = -bottom_S * top * sag;
  h[BOTTOM_BY_TOP] = -top_S * bottom * sag;
  h[BOTTOM_BY_BOTTOM] = bottom_S * (square - bottom * sag);
  h[PLUG_BY_TOP] = top_S * heater_V * heater_V;
  h[PLUG_BY_BOTTOM] = bottom_S * heater_V * heater_V;
}
