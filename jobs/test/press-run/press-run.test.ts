import { type RunStep, runSteps } from '@loopwright/records/run';
import { describe, expect, it } from 'vitest';
import { stepRules } from '../../src/press-run/index.ts';
import { changesOf, World } from './run-world.ts';

describe('order', () => {
  it('[RUN-01] the order of the table is one in which every step comes after what it needs', () => {
    const seen = new Set<RunStep>();
    for (const step of runSteps) {
      expect(
        stepRules[step].needs.filter((need) => !seen.has(need)),
        step,
      ).toEqual([]);
      seen.add(step);
    }
  });

  it('[RUN-02] somebody who knows the work gets from the start to the end in 14 taps besides photos', () => {
    const world = new World();
    while (!world.state.end && world.goOn(({ fast }) => fast));
    expect(world.state.end?.how).toBe('finished');
    expect(world.taps).toBeLessThanOrEqual(14);
    expect(world.state.passedOver).toEqual([]);
  });

  it('[RUN-03] taps of their own: none stands where the one before it stood, none takes another group along', () => {
    for (const pick of ['main', 'fast'] as const) {
      const world = new World();
      let before = '';
      const own: string[] = [];
      while (!world.state.end) {
        const view = world.view();
        const action = view[pick] ?? view.main;
        if (action && changesOf(action)) {
          const place = `${action.placement.place} ${action.placement.shape}`;
          if (action.own) {
            expect(place).not.toBe(before);
            own.push(...action.steps.filter((step) => stepRules[step].own));
            expect(new Set(action.steps.map((step) => stepRules[step].group)).size).toBe(1);
          }
          before = place;
        }
        if (!world.goOn((each) => each[pick])) break;
      }
      expect(own).toEqual(['lock-out', 'match', 'open', 'lock-off', 'unlock']);
    }
  });
});
