import { inRange } from '../in-range.ts';

export interface ElongationWindow {
  readonly id:
    | 'polyester-fabric'
    | 'polyamide-fabric'
    | 'aramid'
    | 'polyester-cord'
    | 'polyamide-sheet'
    | 'unreinforced-tpu';
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

const installation = 'published installation guidance (from memory)';
const memory = 'from memory';

/** Elongations at which belts of each tension member are fitted; the belt's data sheet comes first. */
export const elongationWindows: readonly ElongationWindow[] = [
  { id: 'polyester-fabric', low: 0.003, high: 0.01, source: installation },
  { id: 'polyamide-fabric', low: 0.005, high: 0.03, source: installation },
  { id: 'aramid', low: 0.0015, high: 0.004, source: memory },
  { id: 'polyester-cord', low: 0.005, high: 0.015, source: memory },
  { id: 'polyamide-sheet', low: 0.015, high: 0.03, source: memory },
  { id: 'unreinforced-tpu', low: 0.06, high: 0.1, source: memory },
];

/** Where an elongation lies, and by how much it misses the window (0 inside). */
export interface WindowCheck {
  readonly place: 'under' | 'inside' | 'over';
  readonly missedBy: number;
}

/**
 * Places an elongation against the window in which the belt may be fitted.
 *
 * @param elongation - elongation as a share [1], 0 to 0.5
 * @param window.low - smallest [1], 0 to 0.5
 * @param window.high - largest [1], low to 0.5
 * @returns place, and distance to the nearer limit [1]
 * @throws not-finite, out-of-range
 * @source derived: plain comparison
 */
export function checkElongation(
  elongation: number,
  window: { readonly low: number; readonly high: number },
): WindowCheck {
  inRange(window.low, 'window.low', { min: 0, max: 0.5, unit: '1' });
  inRange(window.high, 'window.high', { min: window.low, max: 0.5, unit: '1' });
  inRange(elongation, 'elongation', { min: 0, max: 0.5, unit: '1' });
  if (elongation < window.low) return { place: 'under', missedBy: window.low - elongation };
  if (elongation > window.high) return { place: 'over', missedBy: elongation - window.high };
  return { place: 'inside', missedBy: 0 };
}
