/** Invented example press and belt: light air-cooled press, 120 V, belt 2.4 mm of two covers and a ply. */
const cover = {
  thickness_m: 0.0008,
  conductivity_W_mK: 0.2,
  density_kg_m3: 1150,
  specificHeat_J_kgK: 1575,
  specificHeatSlope_J_kgK2: 3.75,
  specificHeatCap_J_kgK: 2200,
  melt: { heat_J_kg: 8000, centre_degC: 165, width_K: 50 },
  belt: true,
};
const platen = {
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

/** Specific heat that changes, melting, PI control, all depths of the belt. */
export const general = {
  layers: [
    {
      name: 'pressure plate',
      thickness_m: 0.002,
      conductivity_W_mK: 160,
      density_kg_m3: 2700,
      specificHeat_J_kgK: 920,
    },
    {
      name: 'release cloth',
      thickness_m: 0.00025,
      conductivity_W_mK: 0.22,
      density_kg_m3: 1400,
      specificHeat_J_kgK: 1150,
    },
    { name: 'cover', ...cover },
    {
      name: 'ply',
      thickness_m: 0.0008,
      conductivity_W_mK: 0.18,
      density_kg_m3: 1250,
      specificHeat_J_kgK: 1500,
      belt: true,
    },
    { name: 'cover', ...cover },
    { name: 'template', thickness_m: 0.0018, conductivity_W_mK: 0.23, density_kg_m3: 1200, specificHeat_J_kgK: 1300 },
  ],
  contacts_W_m2K: [3000, 1000, 1500, null, null, 1500, 1000],
  ambient_degC: 25,
  top: platen,
  bottom: platen,
  supply: { volts_V: 120, leadResistance_ohm: 0.08, control_W: 10, fan_W: 40 },
  recipe: { top_degC: 182, bottom_degC: 188, ready_K: 2, dwell_s: 160, open_degC: 50, pressure_Pa: 2e5 },
  probes: [{ layer: 3, fraction: 0.5 }],
};

const constantLayer = ({ specificHeatSlope_J_kgK2, specificHeatCap_J_kgK, melt, belt, ...layer }) =>
  melt ? { ...layer, specificHeat_J_kgK: 2000 } : layer;
const proportional = { ...platen, capacitySlope_1_K: 0, control: { kind: 'proportional', band_K: 6 } };

/** Constant properties, proportional control, no lead, the belt's middle alone. */
export const constant = {
  ...general,
  layers: general.layers.map(constantLayer).map((layer, index) => (index === 3 ? { ...layer, belt: true } : layer)),
  top: proportional,
  bottom: proportional,
  supply: { ...general.supply, leadResistance_ohm: 0 },
  recipe: { ...general.recipe, ready_K: 3 },
};
