import { inRange } from '../../in-range.ts';
import { type BurnThreshold, burnThreshold_degC, burnThresholds, type Surface } from './burn-thresholds.ts';
import { coolingTime_s } from './cooling-time.ts';

export interface TouchInput {
  readonly surface: Surface;
  readonly surface_degC: number;
  readonly room_degC: number;
  /** How fast the surface cools once the press is open. */
  readonly timeConstant_s: number;
  readonly thresholds?: readonly BurnThreshold[] | undefined;
}

/** When a surface gets below the burn threshold of a brief, a deliberate and a long touch. */
export interface Touch {
  /** Above the threshold of one second: a brush against it may burn. */
  readonly burnsAtOnce: boolean;
  readonly times: readonly {
    readonly contact_s: number;
    readonly limit_degC: number;
    readonly wait_s: number | null;
  }[];
}

const handling_s = [1, 10, 60, 600] as const;

/**
 * How long to wait after opening until a surface is below the burn threshold, for touches of 1, 10, 60 and 600 s.
 *
 * @param input - surface, its temperature and the room's [degC], time constant of cooling [s]
 * @returns per time of contact [s] the threshold [degC] and the wait [s]; null where the room itself is too warm
 * @throws not-finite, out-of-range
 * @validity thresholds are from memory: check your copy of the standard; cooling as one lump
 * @source derived: burn thresholds and lumped cooling
 * @verified TOUCH-04 wait for a touch of 10 s
 */
export function whenTouched(input: TouchInput): Touch {
  const { surface, room_degC, thresholds = burnThresholds } = input;
  const surface_degC = inRange(input.surface_degC, 'surface_degC', { min: -60, max: 400, unit: 'degC' });
  inRange(room_degC, 'room_degC', { min: -60, max: 80, unit: 'degC' });
  inRange(input.timeConstant_s, 'timeConstant_s', { min: 0, max: 1e6, unit: 's', above: true });
  const times = handling_s.map((contact_s) => {
    const limit_degC = burnThreshold_degC(surface, contact_s, thresholds);
    return { contact_s, limit_degC, wait_s: wait(limit_degC) };
  });
  return { burnsAtOnce: surface_degC > burnThreshold_degC(surface, 1, thresholds), times };

  function wait(limit_degC: number): number | null {
    if (surface_degC <= limit_degC) return 0;
    if (limit_degC <= room_degC) return null;
    const { timeConstant_s } = input;
    return coolingTime_s({ from_degC: surface_degC, to_degC: limit_degC, around_degC: room_degC, timeConstant_s });
  }
}
