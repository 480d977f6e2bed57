/** Both heaters behind one lead: what they draw depends on both, for the lead's drop is shared. */
export interface Heaters {
  readonly volts_V: number;
  readonly lead_ohm: number;
  /** Conductance of each heater [S]: power over nominal voltage squared. */
  readonly top_S: number;
  readonly bottom_S: number;
  readonly area_m2: number;
  // What the latest shares of full power give.
  top_W_m2: number;
  bottom_W_m2: number;
  plug_W: number;
  current_A: number;
  // Slopes by the share of each heater.
  topByTop: number;
  topByBottom: number;
  bottomByTop: number;
  bottomByBottom: number;
  plugByTop: number;
  plugByBottom: number;
}

/**
 * Two resistive heaters of given power at their nominal voltage, fed through one lead.
 *
 * @param own - supply voltage [V], loop resistance [ohm], conductance of each heater [S], platen area [m2]
 * @returns heaters, switched off
 * @source derived: Ohm's law
 */
export function heaters(own: Pick<Heaters, 'volts_V' | 'lead_ohm' | 'top_S' | 'bottom_S' | 'area_m2'>): Heaters {
  return {
    ...own,
    top_W_m2: 0,
    bottom_W_m2: 0,
    plug_W: 0,
    current_A: 0,
    topByTop: 0,
    topByBottom: 0,
    bottomByTop: 0,
    bottomByBottom: 0,
    plugByTop: 0,
    plugByBottom: 0,
  };
}

/**
 * Heat, current and power at the plug for two shares of full power, with their slopes.
 * g = u_t/R_t + u_b/R_b; V_h = V/(1 + R_lead*g); W = u*V_h^2/R; I = V_h*g.
 *
 * @param h - heaters, overwritten
 * @param top - share of full power of the upper heater u_t [1]
 * @param bottom - share of full power of the lower heater u_b [1]
 * @returns nothing
 * @source derived: Ohm's law; a share is the share of the time that the heater is on
 * @verified CYCLE-03 peak current
 */
export function driveHeaters(h: Heaters, top: number, bottom: number): void {
  const load_S = top * h.top_S + bottom * h.bottom_S;
  const drop = 1 / (1 + h.lead_ohm * load_S);
  const heater_V = h.volts_V * drop;
  const square = (heater_V * heater_V) / h.area_m2;
  h.top_W_m2 = top * h.top_S * square;
  h.bottom_W_m2 = bottom * h.bottom_S * square;
  h.current_A = heater_V * load_S;
  h.plug_W = h.volts_V * h.current_A;
  const sag = 2 * h.lead_ohm * drop;
  h.topByTop = h.top_S * (square - h.top_W_m2 * sag);
  h.topByBottom = -h.bottom_S * h.top_W_m2 * sag;
  h.bottomByTop = -h.top_S * h.bottom_W_m2 * sag;
  h.bottomByBottom = h.bottom_S * (square - h.bottom_W_m2 * sag);
  const plugSlope = heater_V * heater_V;
  h.plugByTop = h.top_S * plugSlope;
  h.plugByBottom = h.bottom_S * plugSlope;
}
