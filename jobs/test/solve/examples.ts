import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { consistency6to8, inclusion5in8, roots } from '../../../records/test/vectors/rfc-6962.ts';

const madeElsewhere = join(import.meta.dirname, '../../../records/test/fixtures/independent/log.json');
const { lines, branch, publicKey_hex, plant } = JSON.parse(readFileSync(madeElsewhere, 'utf8')) as Record<
  string,
  unknown
>;

/**
 * One input per topic with a number that somebody else computed. `at` is the place of that number in the answer.
 */
export interface TopicExample {
  readonly topic: string;
  readonly input: Readonly<Record<string, unknown>>;
  readonly expected: readonly {
    readonly at: readonly (string | number)[];
    readonly value: number;
    readonly tolerance: number;
  }[];
  readonly source: string;
}

const mm = 0.001;
const pulley = (x: number, y: number, radius: number, turn: 'left' | 'right') => ({
  x_m: x * mm,
  y_m: y * mm,
  surfaceRadius_m: radius * mm,
  turn,
});

/** A live-roller loop of eight pulleys: drive and take-up hang under the bed between snubs. */
const loop = [
  pulley(0, 0, 50, 'left'),
  pulley(2890, -90, 40, 'right'),
  pulley(3000, -330, 80, 'left'),
  pulley(3110, -90, 40, 'right'),
  pulley(3690, -90, 40, 'right'),
  pulley(3800, -330, 60, 'left'),
  pulley(3910, -90, 40, 'right'),
  pulley(6000, 0, 50, 'left'),
];
const thin = { thickness_m: 0, neutralLineFromRunningFace_m: 0 };
const belt = { thickness_m: 2 * mm, neutralLineFromRunningFace_m: 0.6 * mm };
const six = 0.5e-6 * mm;

/** A light air-cooled press with a belt of 2.4 mm, as another program computed its cycle. */
const cover = {
  conductivity_W_mK: 0.2,
  density_kg_m3: 1150,
  specificHeat_J_kgK: 1575,
  specificHeatSlope_J_kgK2: 3.75,
  specificHeatCap_J_kgK: 2200,
  melt: { heat_J_kg: 8000, centre_degC: 165, width_K: 50 },
  belt: true,
};
const plain = (conductivity_W_mK: number, density_kg_m3: number, specificHeat_J_kgK: number) => ({
  conductivity_W_mK,
  density_kg_m3,
  specificHeat_J_kgK,
});
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
const pressCycle = {
  layers: [
    { name: 'press plate', thickness_m: 0.002, ...plain(160, 2700, 920) },
    { name: 'release cloth', thickness_m: 0.00025, ...plain(0.22, 1400, 1150) },
    { name: 'cover', thickness_m: 0.0008, ...cover },
    { name: 'ply', thickness_m: 0.0008, ...plain(0.18, 1250, 1500), belt: true },
    { name: 'cover', thickness_m: 0.0008, ...cover },
    { name: 'template', thickness_m: 0.0018, ...plain(0.23, 1200, 1300) },
  ],
  contacts_W_m2K: [3000, 1000, 1500, null, null, 1500, 1000],
  ambient_degC: 25,
  top: platen,
  bottom: platen,
  supply: { volts_V: 120, leadResistance_ohm: 0.08, control_W: 10, fan_W: 40 },
  recipe: { top_degC: 182, bottom_degC: 188, ready_K: 2, dwell_s: 160, open_degC: 50, pressure_Pa: 2e5 },
};
const pressMarks = 'independent: BDF in another program; two grids agree to 0.01 K and 0.05 s';

export const examples: readonly TopicExample[] = [
  {
    topic: 'path',
    input: { pulleys: loop, belt: thin },
    expected: [
      { at: ['length_m'], value: 13526.143179 * mm, tolerance: six },
      { at: ['wraps_rad', 2], value: (184.822576 * Math.PI) / 180, tolerance: 1e-8 },
      { at: ['turning'], value: 1, tolerance: 0 },
    ],
    source: 'independent: signed-radius tangents in another program',
  },
  {
    topic: 'cut-length',
    input: {
      pulleys: loop,
      belt,
      takeUp: { pulley: 5, direction: [0, -1], reference_m: 0.03, max_m: 0.12 },
      setElongation: 0.008,
      fingerLength_m: 0.07,
      lengthTolerance: 0.003,
      k1_N_mm_pct: 8,
      width_m: 0.03,
    },
    expected: [
      { at: ['endlessLength_m'], value: 13494.5322 * mm, tolerance: 0.5e-4 * mm },
      { at: ['stripTipToTip_m'], value: 13564.5322 * mm, tolerance: 0.5e-4 * mm },
      { at: ['slackTakeUp_m'], value: -24.0073 * mm, tolerance: 0.5e-4 * mm },
      { at: ['elongationRange', 0], value: 0.004985, tolerance: 0.5e-7 },
      { at: ['strandTension_N'], value: 192, tolerance: 1e-9 },
    ],
    source: 'independent: signed-radius tangents and a root search in another program',
  },
  {
    topic: 'tension-round-loop',
    input: {
      pulleys: loop,
      belt: thin,
      drive: 2,
      strand: 7,
      loads: [{ from_m: 0, to_m: 6, pull_N_m: 30 }],
      takeUp: { kind: 'screw', tension_N: 240 },
      friction: 0.25,
      beltMass_kg_m: 0.08,
      speed_m_s: 0,
    },
    expected: [
      { at: ['slack_N'], value: 153.8231, tolerance: 0.5e-4 },
      { at: ['tight_N'], value: 333.8231, tolerance: 0.5e-4 },
      { at: ['pullAtSlip_N'], value: 186.7321, tolerance: 0.5e-4 },
      { at: ['slipReserve'], value: 1.0374, tolerance: 0.5e-4 },
    ],
    source: 'independent: conservation of strain between fixed centres, in another program',
  },
  {
    topic: 'tension-by-sound',
    input: { frequency_Hz: 47.21746, span_m: 0.58, beltMass_kg_m: 0.08 },
    expected: [{ at: ['string_N'], value: 240, tolerance: 1e-4 }],
    source: 'derived: first mode of a string',
  },
  {
    topic: 'tension-by-push',
    input: { span_m: 0.58, force_N: 16.551724, deflection_m: 0.01, tensileStiffness_N: 24000 },
    expected: [{ at: ['firstOrder_N'], value: 240, tolerance: 1e-4 }],
    source: 'derived: Q = 4 T d / L',
  },
  {
    topic: 'tension-by-marks',
    input: { marks_m: 1, stretched_m: 1.008, k1_N_mm_pct: 8, width_m: 0.03 },
    expected: [
      { at: ['tension_N'], value: 192, tolerance: 1e-6 },
      { at: ['fresh_N'], value: 345.6, tolerance: 1e-6 },
      { at: ['range_N', 0], value: 180, tolerance: 1e-6 },
    ],
    source: 'derived: F = k1 e b; half a millimetre in a metre is 0.05 %',
  },
  {
    topic: 'edge-slivers',
    input: { width_m: 0.03, pitch_m: 0.0115 },
    expected: [
      { at: ['atTip_m'], value: 2.25 * mm, tolerance: 1e-9 },
      { at: ['atFlank_m'], value: 0.625 * mm, tolerance: 1e-9 },
      { at: ['threshold_m'], value: 1.5 * mm, tolerance: 1e-9 },
    ],
    source: 'derived: distances of the zigzag from the edge, by hand',
  },
  {
    topic: 'splice-strength',
    input: {
      fingerLength_m: 0.07,
      pitch_m: 0.0115,
      thickness_m: 0.002,
      tipWidth_m: 0.0005,
      developmentLength_m: 0.01125,
      beltStrength_N_mm: 120,
      weldShear_MPa: 8,
    },
    expected: [
      { at: ['reinforcement_N_mm'], value: 96.3354, tolerance: 0.5e-4 },
      { at: ['weld_N_mm'], value: 194.7826, tolerance: 0.5e-4 },
      { at: ['strength_N_mm'], value: 94.946, tolerance: 0.5e-4 },
    ],
    source: 'independent: the two capacities and their soft minimum in another program',
  },
  {
    topic: 'tensile-sample',
    input: { pulls_N_mm: [92.1, 95.4, 88.7, 97, 93.3] },
    expected: [
      { at: ['mean'], value: 93.3, tolerance: 1e-9 },
      { at: ['factor'], value: 2.33532, tolerance: 0.5e-5 },
      { at: ['characteristic'], value: 85.8507, tolerance: 0.5e-4 },
    ],
    source: 'independent: EN 1990 Annex D (from memory) with a t quantile of another program',
  },
  {
    topic: 'press-up',
    input: {
      carrierRadius_m: 0.025,
      pressureRollerRadius_m: 0.02,
      beltThickness_m: 0.002,
      pitch_m: 0.1,
      tension_N: 200,
      pressUp_m: 0.001,
    },
    expected: [
      { at: ['angle_rad'], value: 0.020189, tolerance: 0.5e-6 },
      { at: ['force_N'], value: 8.075, tolerance: 0.5e-4 },
      { at: ['firstOrderForce_N'], value: 8, tolerance: 1e-9 },
    ],
    source: 'independent: inner tangents of the rollers in another program',
  },
  {
    topic: 'supply',
    input: {
      supply: { volts_V: 230, lead: { length_m: 30, resistance_ohm_km: 13.3 }, breaker_A: 16 },
      heaters: [{ power_W: 2000, nominal_V: 230 }],
    },
    expected: [
      { at: ['leadResistance_ohm'], value: 0.798, tolerance: 1e-9 },
      { at: ['current_A'], value: 8.440986, tolerance: 0.51e-6 },
      { at: ['heaterVolts_V'], value: 223.264093, tolerance: 0.51e-6 },
      { at: ['heaterPowers_W', 0], value: 1884.569, tolerance: 0.51e-3 },
      { at: ['leadLoss_W'], value: 56.8577, tolerance: 0.51e-4 },
      { at: ['dropShare'], value: 0.02928655, tolerance: 0.51e-8 },
      { at: ['limit_A'], value: 12.8, tolerance: 1e-9 },
    ],
    source: 'independent: Ohm in another program; resistance of IEC 60228 class 5',
  },
  {
    topic: 'pressure',
    input: {
      gaugePressure_Pa: 2e5,
      bagWidth_m: 0.11,
      beltWidth_m: 0.05,
      stripsWidth_m: 0.06,
      plate: {
        beltThickness_m: 0.0024,
        beltModulus_MPa: 20,
        stripsThickness_m: 0.0025,
        stripsModulus_MPa: 5,
      },
    },
    expected: [{ at: ['belt_Pa'], value: 1.553e5, tolerance: 0.5e2 }],
    source: 'independent: balance of forces under a stiff plate, in another program',
  },
  {
    topic: 'fusion',
    input: { times_s: [0, 60], nodes_degC: [[190, 190]], pressure_Pa: [2e5, 2e5] },
    expected: [
      // phi = 1/(1 + exp(-25/7)) = 0.972653; welding time 11.2759208 s by a table of another program.
      { at: ['min', 'healing'], value: (60 * 0.9726535) / 11.2759208, tolerance: 1e-5 },
      { at: ['min', 'flow'], value: (60 * 2e5 * 0.9726535) / 5000, tolerance: 1e-3 },
      { at: ['min', 'fill_m'], value: 1e-4 * Math.sqrt((60 * 2e5 * 0.9726535) / 5000 / 6), tolerance: 1e-9 },
      { at: ['min', 'bond'], value: 1, tolerance: 0 },
    ],
    source: 'derived: held at one temperature, the integrals are products',
  },
  {
    topic: 'cycle',
    input: { ...pressCycle, probes: [{ layer: 3, fraction: 0.5 }] },
    expected: [
      { at: ['marks', 'ready_s'], value: 416.9, tolerance: 0.5 },
      { at: ['marks', 'dwellEnd_s'], value: 576.9, tolerance: 0.5 },
      { at: ['marks', 'open_s'], value: 1039.7, tolerance: 0.5 },
      { at: ['probes', 0, 'peak_degC'], value: 184.17, tolerance: 0.1 },
      { at: ['probes', 0, 'atOpen_degC'], value: 51.21, tolerance: 0.1 },
      { at: ['energy_Wh'], value: 153.01, tolerance: 0.2 },
      { at: ['peakCurrent_A'], value: 11.577, tolerance: 0.001 },
      { at: ['belt', 'healingMin'], value: 12.261, tolerance: 0.06 },
      { at: ['belt', 'fillMin_m'], value: 3.037 * mm, tolerance: 0.01 * mm },
      { at: ['belt', 'molarMassShareMin'], value: 0.98708, tolerance: 0.0001 },
    ],
    source: pressMarks,
  },
  {
    topic: 'cycle-map',
    input: { ...pressCycle, map: { shift_K: [0], dwell_s: [160], pressure_Pa: [2e5] } },
    expected: [
      { at: ['cells', 0, 'ready_s'], value: 416.9, tolerance: 0.5 },
      { at: ['cells', 0, 'open_s'], value: 1039.7, tolerance: 0.5 },
      { at: ['cells', 0, 'fillMin_m'], value: 3.037 * mm, tolerance: 0.01 * mm },
    ],
    source: pressMarks,
  },
  {
    topic: 'canonical',
    // 9.999999999999997E22 and two spaces.
    input: { bytes_hex: '392e3939393939393939393939393939374532322020' },
    expected: [{ at: ['canonical'], value: 9.999999999999997e22, tolerance: 0 }],
    source: 'printed: RFC 8785, appendix B',
  },
  {
    topic: 'log',
    input: { lines, publicKey_hex, plant, checkpoints: [] },
    expected: [
      { at: ['size'], value: 7, tolerance: 0 },
      { at: ['witnessed'], value: 0, tolerance: 0 },
    ],
    source: 'independent: the log was made by another program (make-log.py)',
  },
  {
    topic: 'two-logs',
    input: { a: lines, b: branch, publicKey_hex, plant },
    expected: [{ at: ['at'], value: 4, tolerance: 0 }],
    source: 'independent: both copies were made by another program (make-log.py)',
  },
  {
    topic: 'inclusion',
    input: { entry_hex: '40414243', index: 5, size: 8, proof: inclusion5in8, root: roots[8] },
    expected: [{ at: ['holds'], value: 1, tolerance: 0 }],
    source: 'printed: test data of implementations of RFC 6962',
  },
  {
    topic: 'consistency',
    input: { first: 6, second: 8, proof: consistency6to8, firstRoot: roots[6], secondRoot: roots[8] },
    expected: [{ at: ['holds'], value: 1, tolerance: 0 }],
    source: 'printed: test data of implementations of RFC 6962',
  },
];
