import { inRange } from '../../in-range.ts';
import { Refusal, type Warning } from '../../refusal.ts';
import {
  heaterCurrentRow,
  heaterPowerRow,
  heaterVoltsRow,
  leadResistanceRow,
  outletLimitRow,
} from './supply-formulas.ts';

/** Outlet and lead that feed a press. */
export interface OutletAndLead {
  readonly volts_V: number;
  readonly lead: {
    readonly length_m: number;
    /** Of one conductor at 20 degC; the loop has two. */
    readonly resistance_ohm_km: number;
    readonly temperature_degC?: number | undefined;
  };
  readonly breaker_A: number;
  /** Share of the breaker that a plugged appliance may draw; 0.8 unless given. */
  readonly cordShare?: number | undefined;
}

export interface Heater {
  readonly power_W: number;
  readonly nominal_V: number;
}

export interface SupplyInput {
  readonly supply: OutletAndLead;
  /** Side by side at the end of the lead. */
  readonly heaters: readonly Heater[];
}

export interface SupplyResult {
  readonly leadResistance_ohm: number;
  readonly current_A: number;
  /** By the heaters' plates: nominal powers over nominal voltages. */
  readonly ratedCurrent_A: number;
  readonly heaterVolts_V: number;
  readonly heaterPowers_W: readonly number[];
  readonly leadLoss_W: number;
  /** All heaters against their nominal power. */
  readonly powerShare: number;
  /** Voltage lost in the lead against the outlet. */
  readonly dropShare: number;
  /** How many times longer the press warms up, losses aside. */
  readonly heatUpFactor: number;
  readonly limit_A: number;
  readonly withinLimit: boolean;
  readonly warnings: readonly Warning[];
}

const mostHeaters = 20;
/** Advice of NEC 210.19, note: 5 % up to the appliance; from memory. */
const dropAdvised = 0.05;

/**
 * What an outlet gives a press through its lead: current, voltage, power, and whether the circuit allows it.
 *
 * R = 2*l*r*(1 + 0.00393*(T - 20)); Rh = 1/sum(Pn/Un^2); I = V/(Rh + R); U = V*Rh/(Rh + R); P = Pn*(U/Un)^2;
 * within the limit when neither the current drawn nor the one on the plates exceeds cordShare*breaker.
 *
 * @param input - outlet [V], lead [m], [ohm/km], [degC], breaker [A], share [1]; heaters [W], [V]
 * @returns resistance [ohm], currents [A], voltage [V], powers [W], shares [1], limit [A]
 * @throws too-few, too-many, not-finite, out-of-range
 * @validity heaters are resistors, all of them on; what else hangs on the circuit is not known
 * @source derived: Ohm; 80 % of NEC 210.23(A)(1)
 * @verified SUP-01 current through 30 m of 1.5 mm2
 */
export function supply(input: SupplyInput): SupplyResult {
  const { volts_V: V, R, limit_A } = checkedOutlet(input.supply);
  checkHeaters(input.heaters);
  const conductance_S = input.heaters.reduce((sum, one) => sum + one.power_W / one.nominal_V ** 2, 0);
  const feed = { V, Rh: 1 / conductance_S, R };
  const current_A = heaterCurrentRow.compute(feed);
  const ratedCurrent_A = input.heaters.reduce((sum, one) => sum + one.power_W / one.nominal_V, 0);
  const heaterVolts_V = heaterVoltsRow.compute(feed);
  const heaterPowers_W = input.heaters.map(({ power_W: Pn, nominal_V: Un }) =>
    heaterPowerRow.compute({ Pn, U: heaterVolts_V, Un }),
  );
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const powerShare = sum(heaterPowers_W) / sum(input.heaters.map((one) => one.power_W));
  const most_A = Math.max(current_A, ratedCurrent_A);
  const dropShare = R / (feed.Rh + R);
  return {
    leadResistance_ohm: R,
    current_A,
    ratedCurrent_A,
    heaterVolts_V,
    heaterPowers_W,
    leadLoss_W: current_A ** 2 * R,
    powerShare,
    dropShare,
    heatUpFactor: 1 / powerShare,
    limit_A,
    withinLimit: most_A <= limit_A,
    warnings: warningsOf(most_A, limit_A, dropShare),
  };
}

function checkedOutlet({ volts_V, lead, breaker_A, cordShare = 0.8 }: OutletAndLead) {
  const length_m = inRange(lead.length_m, 'supply.lead.length_m', { min: 0, max: 1000, unit: 'm' });
  const perKm = inRange(lead.resistance_ohm_km, 'supply.lead.resistance_ohm_km', { min: 0, max: 1000, unit: 'ohm/km' });
  const warm = inRange(lead.temperature_degC ?? 20, 'supply.lead.temperature_degC', {
    min: -40,
    max: 120,
    unit: 'degC',
  });
  const breaker = inRange(breaker_A, 'supply.breaker_A', { min: 0.1, max: 1000, unit: 'A' });
  const share = inRange(cordShare, 'supply.cordShare', { min: 0.1, max: 1, unit: '1' });
  return {
    volts_V: inRange(volts_V, 'supply.volts_V', { min: 1, max: 1000, unit: 'V' }),
    R: leadResistanceRow.compute({ l: length_m, r: perKm / 1000, dT: warm - 20 }),
    limit_A: outletLimitRow.compute({ s: share, B: breaker }),
  };
}

function checkHeaters(heaters: readonly Heater[]): void {
  const count = heaters.length;
  if (count < 1) throw new Refusal('too-few', 'heaters', { count, min: 1, max: mostHeaters });
  if (count > mostHeaters) throw new Refusal('too-many', 'heaters', { count, min: 1, max: mostHeaters });
  for (const [i, { power_W, nominal_V }] of heaters.entries()) {
    inRange(power_W, `heaters[${i}].power_W`, { min: 0.1, max: 1e5, unit: 'W' });
    inRange(nominal_V, `heaters[${i}].nominal_V`, { min: 1, max: 1000, unit: 'V' });
  }
}

function warningsOf(most_A: number, limit_A: number, dropShare: number): Warning[] {
  const warnings: Warning[] = [];
  if (most_A > limit_A) {
    warnings.push({
      code: 'current-over-limit',
      path: 'supply.breaker_A',
      data: { value: most_A, max: limit_A, unit: 'A' },
    });
  }
  if (dropShare > dropAdvised) {
    const data = { value: 100 * dropShare, max: 100 * dropAdvised, unit: '%' };
    warnings.push({ code: 'lead-drops-voltage', path: 'supply.lead', data });
  }
  return warnings;
}
