import * as z from 'zod';
import { index, number } from './fields.ts';

const optional = (unit: string, description: string) => z.exactOptional(number(unit, description));

const layer = z.strictObject({
  name: z.string().max(200).meta({ description: 'Name of the layer' }),
  thickness_m: number('m', 'Thickness'),
  conductivity_W_mK: number('W/(m K)', 'Heat conductivity at 25 degC'),
  conductivitySlope_1_K: optional('1/K', 'Growth of the conductivity'),
  density_kg_m3: number('kg/m3', 'Density'),
  specificHeat_J_kgK: number('J/(kg K)', 'Specific heat at 20 degC'),
  specificHeatSlope_J_kgK2: optional('J/(kg K2)', 'Growth of the specific heat'),
  specificHeatCap_J_kgK: optional('J/(kg K)', 'Specific heat above which it grows no more'),
  melt: z.exactOptional(
    z.strictObject({
      heat_J_kg: number('J/kg', 'Heat of melting'),
      centre_degC: number('degC', 'Middle of the range of melting'),
      width_K: number('K', 'Full width of that range'),
    }),
  ),
  belt: z.exactOptional(z.boolean().meta({ description: 'True for the layers that are the belt' })),
});

const control = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('proportional'), band_K: number('K', 'Band below the set point') }),
  z.strictObject({
    kind: z.literal('pi'),
    band_K: number('K', 'Proportional band'),
    integral_s: number('s', 'Integral time'),
    tracking_s: number('s', 'Time with which the integral follows the limited output'),
  }),
  z.strictObject({
    kind: z.literal('on-off'),
    hysteresis_K: number('K', 'On half of it below, off half of it above the set point'),
    sample_s: number('s', 'Time between decisions'),
  }),
]);

const face = z.strictObject({
  faces: z.enum(['up', 'down', 'side']).meta({ description: 'Which way it looks' }),
  length_m: number('m', 'Height of a side; area over perimeter of a face that looks up or down'),
  emissivity: number('1', 'Emissivity'),
  area_m2: number('m2', 'Area'),
});

const water = z.strictObject({
  inlet_degC: number('degC', 'Water that enters'),
  flow_kg_s: number('kg/s', 'Water through the platen'),
  transferUnits: number('1', 'Number of transfer units of its channels'),
  from_degC: optional('degC', 'Sensor at which the water is let in; without it when cooling begins'),
});

const platen = z.strictObject({
  area_m2: number('m2', 'Area'),
  capacity_J_m2K: number('J/(m2 K)', 'Heat capacity per area at 25 degC'),
  capacitySlope_1_K: number('1/K', 'Growth of the capacity').default(0),
  heater_W: number('W', 'Power of the heater at its nominal voltage'),
  nominal_V: number('V', 'Nominal voltage'),
  loss_W_m2K: number('W/(m2 K)', 'Loss to the air'),
  faces: z.exactOptional(
    z.array(face).meta({ description: 'Bare faces that lose heat to still air and by radiation, beside `loss_W_m2K`' }),
  ),
  fan_W_m2K: number('W/(m2 K)', 'Added while the fan cools'),
  water: z.exactOptional(water.meta({ description: 'Water that cools beside the fan' })),
  sensorLag_s: number('s', 'Lag of the sensor'),
  control,
});

const fusionParameters = {
  meltCentre_degC: optional('degC', 'Temperature at which half of the hard segments are molten'),
  meltWidth_K: optional('K', 'Width of that transition'),
  weldingTime_s: optional('s', 'Time for two molten faces to become one at 180 degC'),
  weldingEnergy_J_mol: optional('J/mol', 'Its activation energy'),
  viscosityAt190_Pa_s: optional('Pa s', 'Viscosity at 190 degC'),
  flowEnergy_J_mol: optional('J/mol', 'Its activation energy'),
  gap_m: optional('m', 'Gap between two flanks'),
  fillNeeded_m: optional('m', 'How deep the melt must run into it'),
  scissionAt210_1_s: optional('1/s', 'Rate of chain scission at 210 degC'),
  scissionEnergy_J_mol: optional('J/mol', 'Its activation energy'),
  fluidity: optional('1', 'Factor on the fluidity, from trial splices'),
  moisture_share: optional('1', 'Water in the belt by mass'),
};

/** Parameters of fusion; each that is left out takes its default. */
export const fusionField = z.exactOptional(
  z.strictObject(fusionParameters).meta({ description: 'What is left out takes its default, which stands in `used`' }),
);

const step = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('ramp'),
    top_degC: optional('degC', 'Set point of the top platen; without it that of the recipe'),
    bottom_degC: optional('degC', 'Set point of the bottom platen; without it that of the recipe'),
    rate_K_s: optional('K/s', 'How fast the set points go there; at once without it'),
  }),
  z.strictObject({ kind: z.literal('soak'), time_s: number('s', 'How long set points are held') }),
  z.strictObject({ kind: z.literal('dwell'), time_s: optional('s', 'Dwell; without it that of the recipe') }),
  z.strictObject({ kind: z.literal('pressure'), pressure_Pa: number('Pa', 'Pressure on the belt from here on') }),
  z.strictObject({
    kind: z.literal('cool'),
    below_degC: optional('degC', 'Both sensors are at or below it at its end; without it as the press opens'),
    time_s: optional('s', 'It ends at the latest after this time'),
  }),
]);

/** A press, a stack, a supply and a recipe: what every topic about a cycle takes. */
export const cycleFields = {
  layers: z.array(layer).meta({ description: 'Between the platens, top first' }),
  contacts_W_m2K: z
    .array(z.nullable(number('W/(m2 K)', 'Heat passing an interface')))
    .meta({ description: 'One per interface from the top platen down; null for a perfect one' }),
  contactsWetted_W_m2K: z.exactOptional(
    z.array(z.nullable(number('W/(m2 K)', 'Heat passing it once the face of the belt is molten'))).meta({
      description:
        'One per interface: in its range of melting a contact at the belt goes over to it; null for one that does not',
    }),
  ),
  ambient_degC: number('degC', 'Air round the press'),
  start_degC: z.exactOptional(number('degC', 'Everything when the heaters are switched on; without it as the air')),
  top: platen,
  bottom: platen,
  supply: z.strictObject({
    volts_V: number('V', 'Voltage at the outlet'),
    leadResistance_ohm: number('ohm', 'Whole loop of the lead, shared by both heaters'),
    control_W: number('W', 'Drawn from start to opening').default(0),
    fan_W: number('W', 'Drawn while cooling').default(0),
  }),
  recipe: z.strictObject({
    top_degC: number('degC', 'Set point of the top platen'),
    bottom_degC: number('degC', 'Set point of the bottom platen'),
    ready_K: number('K', 'The dwell begins when both sensors are this close below their set points'),
    dwell_s: number('s', 'Dwell'),
    open_degC: number('degC', 'Both sensors are at or below it when the press opens'),
    pressure_Pa: number('Pa', 'Pressure on the belt'),
    steps: z.exactOptional(
      z.array(step).meta({
        description: 'One after the other, from switching on to opening; without them a ramp, a dwell, a cool',
      }),
    ),
  }),
  fusion: fusionField,
};

/** Places in the stack, and times, for which values are wanted. */
export const cycleProbes = {
  probes: z
    .array(
      z.strictObject({
        layer: index('Layer'),
        fraction: number('1', '0 at its upper face, 1 at its lower one'),
      }),
    )
    .meta({ description: 'Places whose history is wanted' }),
  columns: z.exactOptional(
    z.strictObject({
      left_K: number('K', 'How much the platens are hotter on the left than in the middle, at their set points'),
      right_K: number('K', 'How much they are hotter on the right'),
    }),
  ),
  times_s: z.exactOptional(z.array(number('s', 'Time for which values are wanted'))),
};
