import { type CycleInput, type CycleResult, cycle } from '@loopwright/engine/press';
import * as z from 'zod';
import { result, results } from '../fields.ts';
import { fusionUsed } from '../fusion-used.ts';
import { cycleFields, cycleProbes } from '../press-fields.ts';
import { gradeFields } from '../press-results.ts';
import { type Outcome, topic } from '../topic.ts';

const values = (unit: string, what: string) =>
  z.exactOptional(results(unit, `${what} at the times; null after opening`));

const probe = z.strictObject({
  peak_degC: result('degC', 'Highest temperature'),
  peakAt_s: result('s', 'When'),
  atReady_degC: result('degC', 'When the dwell begins'),
  atDwellEnd_degC: result('degC', 'When the dwell ends'),
  atOpen_degC: result('degC', 'When the press opens'),
  healing: result('1', 'Healing integral Z'),
  bond: result('1', 'Bond D = min(1, Z^(1/4))'),
  flow: result('1', 'Flow integral J'),
  fill_m: result('m', 'How deep the melt runs into the gap'),
  molarMassShare: result('1', 'What is left of the molar mass'),
  values_degC: values('degC', 'Temperature'),
  bondValues: values('1', 'Bond'),
  fillValues_m: values('m', 'Fill'),
  molarMassShareValues: values('1', 'Molar mass left'),
});

const platen = z.strictObject({
  values_degC: values('degC', 'Temperature'),
  overshoot_K: result('K', 'Highest temperature above the set point'),
  atOpen_degC: result('degC', 'When the press opens'),
});
const sensor = z.strictObject({ values_degC: values('degC', 'Temperature') });
const pair = <T extends z.ZodType>(side: T) => z.strictObject({ top: side, bottom: side });

const belt = z
  .strictObject({
    healingMin: result('1', 'Least healing'),
    bondMin: result('1', 'Least bond'),
    bondMean: result('1', 'Mean bond'),
    flowMin: result('1', 'Least flow integral'),
    fillMin_m: result('m', 'Least fill'),
    fillMean_m: result('m', 'Mean fill'),
    fillMax_m: result('m', 'Most fill'),
    molarMassShareMin: result('1', 'Least molar mass left'),
    max_degC: result('degC', 'Highest temperature'),
    atOpenMax_degC: result('degC', 'Highest temperature when the press opens'),
  })
  .meta({ description: 'Over all depths of the belt' });

const column = z.strictObject({ belt, ...gradeFields });

export const cycleTopic = topic({
  id: 'cycle',
  about: 'One press cycle: heat, flow, fusion and damage from switching on to opening',
  input: z.strictObject({ ...cycleFields, ...cycleProbes }),
  output: z.strictObject({
    marks: z.strictObject({
      ready_s: result('s', 'Dwell begins'),
      dwellEnd_s: result('s', 'Dwell ends'),
      open_s: result('s', 'Press opens'),
      bonded_s: result('s', 'All depths of the belt have D = 1; null when that never was'),
      stepEnds_s: z.exactOptional(results('s', 'End of each step that the recipe gives')),
    }),
    probes: z.array(probe),
    platens: pair(platen),
    sensors: pair(sensor),
    belt,
    energy_Wh: result('Wh', 'At the plug, with control and fan'),
    heaterEnergy_Wh: result('Wh', 'Heat that the heaters gave'),
    leadEnergy_Wh: result('Wh', 'Lost in the lead'),
    peakCurrent_A: result('A', 'Of the heaters alone'),
    balanceResidual: result('1', 'What the energy balance misses, as a share of the heat put in'),
    steps: result('1', 'Steps of the solver'),
    ...gradeFields,
    columns: z.exactOptional(
      z.strictObject({ left: column, centre: column, right: column, worst: z.enum(['left', 'centre', 'right']) }),
    ),
  }),
  formulas: [],
  run: (input: CycleInput) => outcome(cycle(input), input),
  worked: () => [],
});

function outcome(computed: CycleResult, input: CycleInput): object & Outcome {
  const used = {
    ...(input.start_degC === undefined && { start_degC: input.ambient_degC }),
    ...fusionUsed(input.fusion),
  };
  if (computed.status === 'ok') {
    const { status: _, ...result } = computed;
    return { ...result, used };
  }
  const { reason, residual, iterations } = computed;
  return { used, notConverged: { reason, residual, iterations } };
}
