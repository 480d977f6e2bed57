import type { CycleInput, Layer, Platen } from '../../../src/press/index.ts';

/** Invented presses and belts; the numbers are ordinary engineering ones, none of them measured. */
const cover = {
  conductivity_W_mK: 0.2,
  density_kg_m3: 1150,
  specificHeat_J_kgK: 1575,
  specificHeatSlope_J_kgK2: 3.75,
  specificHeatCap_J_kgK: 2200,
  melt: { heat_J_kg: 8000, centre_degC: 165, width_K: 50 },
  belt: true,
} as const;
const ply = { conductivity_W_mK: 0.18, density_kg_m3: 1250, specificHeat_J_kgK: 1500, belt: true } as const;
const plate = { conductivity_W_mK: 160, density_kg_m3: 2700, specificHeat_J_kgK: 920 };
const cloth = { conductivity_W_mK: 0.22, density_kg_m3: 1400, specificHeat_J_kgK: 1150 };
const silicone = { conductivity_W_mK: 0.23, density_kg_m3: 1200, specificHeat_J_kgK: 1300 };

const belts = {
  'Sedge-18': { third_m: 0.0006, template_m: 0.0015, top: 180, bottom: 185, dwell_s: 175, pressure_Pa: 2e5 },
  'Alder-24': { third_m: 0.0008, template_m: 0.0018, top: 182, bottom: 188, dwell_s: 160, pressure_Pa: 2e5 },
  'Flint-30': { third_m: 0.001, template_m: 0.002, top: 183, bottom: 190, dwell_s: 160, pressure_Pa: 2.2e5 },
} as const;
export type Belt = keyof typeof belts;

const light: Platen = {
  area_m2: 0.045,
  capacity_J_m2K: 25_300,
  capacitySlope_1_K: 4.4e-4,
  heater_W: 700,
  nominal_V: 120,
  loss_W_m2K: 8,
  fan_W_m2K: 130,
  sensorLag_s: 3,
  control: { kind: 'pi', band_K: 6, integral_s: 60, tracking_s: 10 },
};
const heavy: Platen = {
  ...light,
  area_m2: 0.064,
  capacity_J_m2K: 62_750,
  loss_W_m2K: 10,
  fan_W_m2K: 65,
  control: { kind: 'pi', band_K: 6, integral_s: 120, tracking_s: 10 },
};
const platens = { light, heavy };

function layersOf(belt: Belt): Layer[] {
  const { third_m, template_m } = belts[belt];
  return [
    { name: 'pressure plate', thickness_m: 0.002, ...plate },
    { name: 'release cloth', thickness_m: 0.000_25, ...cloth },
    { name: 'cover', thickness_m: third_m, ...cover },
    { name: 'ply', thickness_m: third_m, ...ply },
    { name: 'cover', thickness_m: third_m, ...cover },
    { name: 'template', thickness_m: template_m, ...silicone },
  ];
}

/** A belt in a press at 120 V behind 0.08 ohm in 25 degC. */
export function pressed(press: 'light' | 'heavy', belt: Belt): CycleInput {
  const { top, bottom, dwell_s, pressure_Pa } = belts[belt];
  return {
    layers: layersOf(belt),
    contacts_W_m2K: [3000, 1000, 1500, null, null, 1500, 1000],
    ambient_degC: 25,
    top: platens[press],
    bottom: platens[press],
    supply: {
      volts_V: 120,
      leadResistance_ohm: 0.08,
      control_W: 10,
      fan_W: press === 'light' ? 40 : 30,
    },
    recipe: { top_degC: top, bottom_degC: bottom, ready_K: 2, dwell_s, open_degC: 50, pressure_Pa },
    probes: [0, 0.5, 1].map((fraction, index) => ({ layer: 2 + index, fraction })),
  };
}

function wound(platen: Platen, nominal_V: number, heater_W = platen.heater_W): Platen {
  return { ...platen, nominal_V, heater_W };
}

/** The same with what its run says to be otherwise. */
export function run(press: 'light' | 'heavy', belt: Belt, name: string): CycleInput {
  const plain = pressed(press, belt);
  const platen = plain.top;
  const both = (of: Platen): Partial<CycleInput> => ({ top: of, bottom: of });
  const supply = (of: object): Partial<CycleInput> => ({ supply: { ...plain.supply, ...of } });
  const recipe = (of: object): Partial<CycleInput> => ({ recipe: { ...plain.recipe, ...of } });
  const changes: readonly (readonly [RegExp, Partial<CycleInput>])[] = [
    [/230V/, { ...both(wound(platen, 230)), ...supply({ volts_V: 230 }) }],
    [/2 x 900 W/, { ...both(wound(platen, 230, 900)), ...supply({ volts_V: 230 }) }],
    [/mains -10 %/, supply({ volts_V: 108 })],
    [/mains \+10 %/, supply({ volts_V: 132 })],
    [/0\.62 ohm/, supply({ leadResistance_ohm: 0.62 })],
    [/at 5 C/, { ambient_degC: 5 }],
    [/at 38 C/, { ambient_degC: 38 }],
    [/162\/166/, recipe({ top_degC: 162, bottom_degC: 166 })],
    [/168\/172/, recipe({ top_degC: 168, bottom_degC: 172, dwell_s: 20 })],
    [
      /210\/216/,
      { ...recipe({ top_degC: 210, bottom_degC: 216, dwell_s: 600 }), fusion: { scissionAt210_1_s: 1.06e-3 } },
    ],
    [/opened at 90/, recipe({ open_degC: 90 })],
  ];
  return Object.assign({}, plain, ...changes.filter(([pattern]) => pattern.test(name)).map(([, change]) => change));
}
