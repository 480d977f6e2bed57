import {
  heaterCurrentRow,
  heaterPowerRow,
  heaterVoltsRow,
  leadResistanceRow,
  outletLimitRow,
  type SupplyInput,
  type SupplyResult,
  supply,
} from '@loopwright/engine/press';
import { type Worked, work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { number, result, results } from '../fields.ts';
import { topic } from '../topic.ts';

export const supplyTopic = topic({
  id: 'supply',
  about: 'Current, voltage and power of heaters behind an outlet and its lead',
  input: z.strictObject({
    supply: z.strictObject({
      volts_V: number('V', 'Voltage at the outlet'),
      lead: z.strictObject({
        length_m: number('m', 'Length of the lead'),
        resistance_ohm_km: number('ohm/km', 'Resistance of one conductor at 20 degC; the loop has two'),
        temperature_degC: number('degC', 'Temperature of the conductors').default(20),
      }),
      breaker_A: number('A', 'Rating of the breaker'),
      cordShare: number('1', 'Share of it that a plugged appliance may draw').default(0.8),
    }),
    heaters: z
      .array(z.strictObject({ power_W: number('W', 'Nominal power'), nominal_V: number('V', 'Nominal voltage') }))
      .meta({ description: 'Side by side at the end of the lead' }),
  }),
  output: z.strictObject({
    leadResistance_ohm: result('ohm', 'Both conductors of the lead'),
    current_A: result('A', 'Drawn with all heaters on'),
    ratedCurrent_A: result('A', 'By the plates of the heaters'),
    heaterVolts_V: result('V', 'Left for the heaters'),
    heaterPowers_W: results('W', 'Power of each heater'),
    leadLoss_W: result('W', 'Lost in the lead'),
    powerShare: result('1', 'Power of all heaters over nominal'),
    dropShare: result('1', 'Voltage lost in the lead over that of the outlet'),
    heatUpFactor: result('1', 'How many times longer the ramp takes, losses aside'),
    limit_A: result('A', 'What a plugged appliance may draw'),
    withinLimit: z.boolean().meta({ description: 'True when neither current is over the limit' }),
  }),
  formulas: [leadResistanceRow, heaterCurrentRow, heaterVoltsRow, heaterPowerRow, outletLimitRow].map(({ id }) => id),
  run: supply,
  worked: workedSupply,
});

function workedSupply({ supply: outlet, heaters }: SupplyInput, { heaterVolts_V: U }: SupplyResult): Worked[] {
  const { volts_V: V, lead, breaker_A: B, cordShare: s = 0.8 } = outlet;
  const dT = (lead.temperature_degC ?? 20) - 20;
  const loop = work(leadResistanceRow, { l: lead.length_m, r: lead.resistance_ohm_km / 1000, dT });
  const Rh = 1 / heaters.reduce((sum, one) => sum + one.power_W / one.nominal_V ** 2, 0);
  const feed = { V, Rh, R: loop.value };
  return [
    loop,
    work(heaterCurrentRow, feed),
    work(heaterVoltsRow, feed),
    ...heaters.map(({ power_W: Pn, nominal_V: Un }) => work(heaterPowerRow, { Pn, U, Un })),
    work(outletLimitRow, { s, B }),
  ];
}
