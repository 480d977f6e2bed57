import { describe, expect, it } from 'vitest';
import { steadyClock } from '../src/store/steady-clock.ts';

/** A page whose clocks and visibility a test turns. */
function page() {
  const at = { wall: 1_800_000_000_000, ticks: 1000, hidden: false };
  let look = (): void => undefined;
  const clock = steadyClock({
    now: () => at.wall,
    ticks: () => at.ticks,
    isHidden: () => at.hidden,
    onVisibility: (given) => {
      look = given;
    },
  });
  const hide = (hidden: boolean): void => {
    at.hidden = hidden;
    look();
  };
  const pass = (seconds: number, asleep = false): void => {
    at.wall += seconds * 1000;
    if (!asleep) at.ticks += seconds * 1000;
  };
  return { at, clock, hide, pass };
}

describe('steady clock', () => {
  it('[STORE-06] goes on through the sleep of a hidden page, whether the browser counts it or not', () => {
    for (const asleep of [true, false]) {
      const { clock, hide, pass } = page();
      pass(10);
      hide(true);
      pass(600, asleep);
      hide(false);
      pass(5);
      expect(clock()).toBe(1000 + 615_000);
    }
  });

  it('[STORE-06] is right before the page hears that it is seen again', () => {
    const { clock, hide, pass } = page();
    hide(true);
    pass(600, true);
    expect(clock()).toBe(601_000);
    hide(false);
    expect(clock()).toBe(601_000);
  });

  it('[STORE-06] a wall clock that somebody sets moves nothing, and it never goes back', () => {
    const { at, clock, hide, pass } = page();
    at.wall += 10_800_000;
    pass(1);
    expect(clock()).toBe(2000);
    hide(true);
    at.wall -= 10_800_000;
    pass(1);
    expect(clock()).toBe(3000);
    hide(false);
    expect(clock()).toBe(3000);
  });
});
