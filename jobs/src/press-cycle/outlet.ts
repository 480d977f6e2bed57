import {
  conductors,
  heaterCurrentRow,
  heaterVoltsRow,
  leadResistanceRow,
  outletLimitRow,
} from '@loopwright/engine/press';
import { type Worked, work } from '@loopwright/engine/worked';
import { type Line, lightPress, lineAir, type Press } from '@loopwright/plant';
import { computed, example, given, type Quantity } from '../quantity.ts';
import { type CycleNumber, known } from './cycle-number.ts';

/** What somebody says of the outlet and the air of today, in the place of what the line holds. */
export interface Today {
  readonly volts_V?: number | undefined;
  readonly breaker_A?: number | undefined;
  /** Extension lead between the press's own lead and the outlet. */
  readonly lead_m?: number | undefined;
  readonly leadSection_m2?: number | undefined;
  readonly air_degC?: number | undefined;
}

/** Where a press is plugged in, and what reaches its heaters. */
export interface Outlet {
  readonly volts: Quantity;
  readonly breaker?: Quantity;
  /** Both conductors of all leads, at 20 degC. */
  readonly lead: Quantity;
  readonly air: Quantity;
  readonly numbers: readonly CycleNumber[];
}

/** Mains of Europe, while neither the line nor the press says a voltage. */
const usualMains_V = 230;
/** A reel as it is sold, for an extension whose section nobody has said: the thin one. */
const usualExtension_m2 = 1.5e-6;
/** A plugged appliance draws at most this share of the breaker. */
const plugShare = 0.8;
/** Air differs over a shift by this much from what somebody read. */
const airSwing_K = 5;

/**
 * The outlet of a line for a press, with what somebody says of today before what the line holds.
 *
 * @param line - its outlet and its air; without one the nominal voltage of the press and usual air
 * @param press - its own lead and its nominal voltage
 * @param today - what differs today
 */
export function outletOf(line: Line | undefined, press: Press, today: Today = {}): Outlet {
  const volts = said('voltage', today.volts_V, line, 'outletVoltage_V') ?? nominalVolts(press);
  const breaker = said('current', today.breaker_A, line, 'outletBreaker_A');
  const own = ownLead(press);
  const extension = extensionLead(line, today);
  const lead = extension ? computed('resistance', own.value + extension.value) : own;
  const air = airOf(line, today);
  return {
    volts,
    lead,
    air,
    ...(breaker && { breaker }),
    numbers: [
      { group: 'outlet', field: 'lines.outletVoltage', quantity: volts },
      ...(breaker ? [{ group: 'outlet', field: 'lines.outletBreaker', quantity: breaker } as const] : []),
      { group: 'outlet', field: 'presses.leadResistance', quantity: own },
      ...(extension ? [{ group: 'outlet', field: 'lines.outletLead', quantity: extension } as const] : []),
      { group: 'outlet', field: 'lines.airTemperature', quantity: air },
    ],
  };
}

type LineNumber = 'outletVoltage_V' | 'outletBreaker_A';

function said(
  kind: Quantity['kind'],
  today: number | undefined,
  line: Line | undefined,
  field: LineNumber,
): Quantity | undefined {
  if (today !== undefined) return { value: today, kind, source: 'person' };
  const value = line?.[field];
  return line === undefined || value === undefined ? undefined : given(kind, value, line, field);
}

function nominalVolts(press: Press): Quantity {
  return example('voltage', press.nominalVoltage_V ?? usualMains_V);
}

function airOf(line: Line | undefined, { air_degC }: Today): Quantity {
  const prior = lineAir.airTemperature_degC;
  const around = (air: Quantity): Quantity => ({ ...air, low: air.value - airSwing_K, high: air.value + airSwing_K });
  if (air_degC !== undefined) return around({ value: air_degC, kind: 'temperature', source: 'person' });
  const air = known('temperature', line, 'airTemperature_degC', prior);
  return air.low === undefined ? around(air) : air;
}

function ownLead(press: Press): Quantity {
  if (press.leadResistance_ohm !== undefined)
    return given('resistance', press.leadResistance_ohm, press, 'leadResistance_ohm');
  const { leadLength_m, leadSection_m2 } = press;
  const worked = leadResistance(
    leadLength_m ?? lightPress.leadLength_m.value,
    leadSection_m2 ?? lightPress.leadSection_m2.value,
  );
  return leadLength_m === undefined || leadSection_m2 === undefined
    ? { ...example('resistance', worked.value), worked }
    : computed('resistance', worked);
}

function extensionLead(line: Line | undefined, today: Today): Quantity | undefined {
  const length_m = today.lead_m ?? line?.outletLead_m ?? 0;
  if (length_m === 0) return undefined;
  return computed(
    'resistance',
    leadResistance(length_m, today.leadSection_m2 ?? line?.outletLeadSection_m2 ?? usualExtension_m2),
  );
}

function leadResistance(length_m: number, section_m2: number): Worked {
  return work(leadResistanceRow, { l: length_m, r: resistancePerLength_ohm_m(section_m2), dT: 0 });
}

/** Of the next smaller section in the table of leads, in proportion: what is sold has at most that resistance. */
function resistancePerLength_ohm_m(section_m2: number): number {
  const sections = conductors.flatMap(({ id, resistance_ohm_km }) => {
    const section_mm2 = / mm2$/.test(id) ? Number.parseFloat(id) : Number.NaN;
    return Number.isNaN(section_mm2) ? [] : [{ section_mm2, resistance_ohm_km }];
  });
  const wanted_mm2 = section_m2 * 1e6;
  const below = sections.filter(({ section_mm2 }) => section_mm2 <= wanted_mm2 * (1 + 1e-9)).at(-1) ?? sections[0];
  return below === undefined ? 0 : (below.resistance_ohm_km * below.section_mm2) / wanted_mm2 / 1000;
}

/** What the heaters get through the lead, both of them on, each by its formula. */
export interface Fed {
  readonly current: Quantity;
  readonly heaterVolts: Quantity;
  readonly limit?: Quantity;
}

/**
 * Current and voltage of the heaters at an outlet.
 *
 * @param outlet - where the press is plugged in
 * @param heaters - of both platens together [W], made for [V]
 */
export function fedBy(outlet: Outlet, heaters: { readonly power_W: number; readonly nominal_V: number }): Fed {
  const feed = { V: outlet.volts.value, R: outlet.lead.value, Rh: heaters.nominal_V ** 2 / heaters.power_W };
  return {
    current: computed('current', work(heaterCurrentRow, feed)),
    heaterVolts: computed('voltage', work(heaterVoltsRow, feed)),
    ...(outlet.breaker && {
      limit: computed('current', work(outletLimitRow, { s: plugShare, B: outlet.breaker.value })),
    }),
  };
}
