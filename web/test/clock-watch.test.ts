import { expect, test } from 'vitest';
import { clockJump, momentOf } from '../src/store/clock-watch.ts';
import { StoreError } from '../src/store/store-error.ts';

const start = { at: '2026-11-25T02:00:00.000Z', up_ms: 5000 };

test('[STORE-06] up to 2 s apart the clocks agree; beyond, the jump is measured', () => {
  const minuteLater = (jump_ms: number) => ({
    at: new Date(Date.parse(start.at) + 60_000 + jump_ms).toISOString(),
    up_ms: start.up_ms + 60_000,
  });
  for (const jump_ms of [0, 2000, -2000]) expect(clockJump(start, minuteLater(jump_ms))).toBeUndefined();
  expect(clockJump(start, minuteLater(2001))?.jump_s).toBe(2);
  expect(clockJump(start, minuteLater(-3_600_000))).toEqual({
    expected: '2026-11-25T02:01:00.000Z',
    shown: '2026-11-25T01:01:00.000Z',
    jump_s: -3600,
    up_ms: 65_000,
  });
});

test('[STORE-06] the end of a 32-bit clock is a moment like any other', () => {
  const before = { at: '2038-01-19T03:14:06.000Z', up_ms: 0 };
  expect(clockJump(before, { at: '2038-01-19T03:14:09.000Z', up_ms: 3000 })).toBeUndefined();
  expect(clockJump(before, { at: '1901-12-13T20:45:52.000Z', up_ms: 2000 })?.jump_s).toBe(-4_294_967_296);
});

test('[STORE-06] a wall clock outside of what can be written is refused, not written', () => {
  for (const now of [-1, Number.NaN, 253_402_300_800_000])
    expect(() => momentOf({ now: () => now, up: () => 0 })).toThrow(StoreError);
  expect(momentOf({ now: () => 253_402_300_799_999, up: () => 0 }).at).toBe('9999-12-31T23:59:59.999Z');
});
