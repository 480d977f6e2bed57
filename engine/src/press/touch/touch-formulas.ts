import { type WorkedFormula, workedFormula } from '../../worked/worked-formula.ts';

const range_degC = [-60, 400] as const;

/** Time until a body has cooled as one lump. */
export const coolingTimeRow = workedFormula({
  id: 'cooling-time',
  expression: 't = tau * ln((T0 - Ta) / (T1 - Ta))',
  result: { symbol: 't', kind: 'time', meaning: 'coolingTime' },
  symbols: {
    tau: { kind: 'time', meaning: 'timeConstant' },
    T0: { kind: 'temperature', meaning: 'startTemperature' },
    T1: { kind: 'temperature', meaning: 'endTemperature' },
    Ta: { kind: 'temperature', meaning: 'airTemperature' },
  },
  compute: ({ tau, T0, T1, Ta }) => tau * Math.log((T0 - Ta) / (T1 - Ta)),
  range: { tau: [1e-3, 1e6], T0: range_degC, T1: range_degC, Ta: range_degC },
  source: 'derived: lumped cooling',
  examples: [
    {
      inputs: { tau: 1, T0: 185, T1: 50, Ta: 25 },
      expected: 1.8563,
      tolerance: 0.51e-4,
      evidence: 'independent',
      source: 'closed form evaluated by a separate program',
    },
  ],
});

export const touchFormulas: readonly WorkedFormula[] = [coolingTimeRow];
