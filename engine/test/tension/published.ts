import { checkAgainst } from '../../../tools/validation/check.ts';

/** One number of the checks on a span that is there, with its evidence. */
export interface Published {
  readonly id: string;
  readonly published: number;
  readonly ours: number | null;
  readonly tolerance: number;
  readonly unit: string;
  readonly source: string;
  readonly evidence?: 'derived' | 'independent' | 'practice';
}

export function checkSpan({ evidence = 'derived', ours, ...rest }: Published): void {
  const inputs = '240 N, 0.08 kg/m, EI 0.0030 N m2, EA 24 000 N';
  checkAgainst({
    topic: 'loop',
    evidence,
    inputs,
    why: 'half the last digit given',
    ours: ours ?? Number.NaN,
    ...rest,
  });
}
