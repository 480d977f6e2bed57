import { nobody, runChange } from '@loopwright/records/run';
import { describe, expect, it } from 'vitest';
import { whyNotNow } from '../../src/press-run/index.ts';
import { plant, World } from './run-world.ts';

const run = 'RUN00001';

/** A run that stands in the press, come to by the main actions. */
function inPress(): World {
  const world = new World();
  while (world.view().current?.step !== 'open') if (!world.goOn()) throw new Error('never came to the press');
  return world;
}

/** A run to its end in which two badges said deviations: b1 opened early, b2 took no photos. */
function twoSaid(): World {
  const world = inPress();
  const early = world.view().others.find(({ code }) => code === 'opened-early');
  world.tap(early?.changes ?? []);
  world.append(runChange('run.handed-over', { run, to: 'b2' }));
  world.device.by = 'b2';
  while (!world.state.end) if (!world.goOn()) throw new Error('no way on');
  return world;
}

describe('second pair of eyes', () => {
  const accepting = (deviation: string) => runChange('run.deviation-accepted', { run, deviation });

  it('[RUN-16] of every deviation: whoever said it and whoever wears no badge cannot accept it, every other badge can', () => {
    const world = twoSaid();
    expect(new Set(world.state.deviations.map(({ said }) => said.by))).toEqual(new Set(['b1', 'b2']));
    for (const { id, said } of world.state.deviations)
      for (const { id: badge } of Object.values(plant.badges))
        expect(
          whyNotNow(world.state, accepting(id), badge).map(({ code }) => code),
          `${id} said by ${said.by}, accepted by ${badge}`,
        ).toEqual(badge === said.by ? ['needs-other-badge'] : []);
    for (const { id } of world.state.deviations)
      expect(whyNotNow(world.state, accepting(id), nobody)).toMatchObject([{ code: 'needs-badge' }]);
  });

  it('[RUN-16] a log that holds an acceptance by the same badge, or by none, does not make it accepted', () => {
    const world = twoSaid();
    const { id = '', said } = world.state.deviations[0] ?? {};
    for (const by of [said?.by ?? '', nobody]) {
      world.device.by = by;
      world.append(accepting(id));
      expect(world.state.deviations[0]?.accepted, by).toBeUndefined();
    }
    world.device.by = 'b4';
    world.append(accepting(id));
    expect(world.state.deviations[0]?.accepted?.by).toBe('b4');
    // Once accepted it stays with whom it was accepted by.
    world.device.by = 'b5';
    expect(whyNotNow(world.state, accepting(id), 'b5')[0]?.code).toBe('settled-already');
    world.append(accepting(id));
    expect(world.state.deviations[0]?.accepted?.by).toBe('b4');
    expect(whyNotNow(world.state, accepting('no such deviation'), 'b4')[0]?.code).toBe('no-such-deviation');
  });

  it('[RUN-18] a run is handed to a badge, never to nobody', () => {
    const world = inPress();
    const to = (badge: string) => runChange('run.handed-over', { run, to: badge });
    expect(whyNotNow(world.state, to(nobody), 'b1')[0]?.code).toBe('needs-badge');
    expect(whyNotNow(world.state, to('b2'), 'b1')).toEqual([]);
  });
});
