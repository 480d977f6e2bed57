import type { Belt, Line, Plant, Press, Recipe } from '@loopwright/plant';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../tools/validation/check.ts';
import { cycleGround } from '../src/press-cycle/cycle-ground.ts';
import type { Today } from '../src/press-cycle/outlet.ts';
import type { PressCycle } from '../src/press-cycle/press-cycle.ts';
import { pressCycleReport } from '../src/press-cycle/press-cycle-report.ts';
import { spliceCard } from '../src/splice-card/splice-card.ts';
import { demoPlant as readDemo } from './demo-plant.ts';

const demoPlant = readDemo();

const now = '2026-11-25T02:10:00Z';

interface Asked {
  readonly press?: string;
  readonly today?: Today;
  readonly plant?: Plant;
}

const report = (position: string, { press = 'P1', today, plant = demoPlant }: Asked = {}) =>
  pressCycleReport(plant, position, { now, press, ...(today && { today }) });

function cycleOf(position: string, asked: Asked = {}): PressCycle {
  const { cycle } = report(position, asked);
  if (cycle?.status !== 'ok') throw new Error(`no cycle: ${JSON.stringify(cycle)}`);
  return cycle;
}

const codes = (position: string, asked: Asked = {}) => report(position, asked).warnings.map(({ code }) => code);

/** The demo plant with one press changed. */
const withPress = (change: Partial<Press>, id = 'P1'): Plant => {
  const press = demoPlant.presses[id];
  if (!press) throw new Error(`no press ${id}`);
  return { ...demoPlant, presses: { ...demoPlant.presses, [id]: { ...press, ...change } } };
};

interface Published {
  readonly what: string;
  readonly position: string;
  readonly asked?: Asked;
  readonly ready_s: number;
  readonly open_s: number;
}

const american = { nominalVoltage_V: 120, leadResistance_ohm: 0.08 };
const on = (volts_V: number, air_degC = 25): Asked => ({ plant: withPress(american), today: { volts_V, air_degC } });
const elsewhere = 'BDF in another program on the same plan; two grids agree to 0.01 K and 0.05 s';

// Light press, 2 x 700 W; the middle of the trade's 17 to 18 min for a complete cycle (common practice).
const published: readonly Published[] = [
  { what: 'belt of 1.8 mm, 230 V', position: 'QM-03-1', ready_s: 402.1, open_s: 1021.9 },
  { what: 'belt of 2.4 mm, 230 V', position: 'QM-01-1', ready_s: 413.6, open_s: 1036.4 },
  { what: 'belt of 3.0 mm, 230 V', position: 'QM-04-3', ready_s: 422.2, open_s: 1060.2 },
  { what: 'belt of 2.4 mm, 120 V', position: 'QM-01-1', asked: on(120), ready_s: 416.9, open_s: 1039.7 },
  { what: 'mains a tenth low', position: 'QM-01-1', asked: on(108), ready_s: 488.3, open_s: 1111.1 },
  { what: 'mains a tenth high', position: 'QM-01-1', asked: on(132), ready_s: 368.6, open_s: 991.3 },
  { what: 'air of 5 degC', position: 'QM-01-1', asked: on(120, 5), ready_s: 463.1, open_s: 970.9 },
  { what: 'air of 38 degC', position: 'QM-01-1', asked: on(120, 38), ready_s: 386.8, open_s: 1166.8 },
];

describe('from the plant to the cycle', () => {
  it('[PCYC-01] the time lines of the light press are those that another program computed', () => {
    for (const { what, position, asked, ready_s, open_s } of published) {
      const { ready, open } = cycleOf(position, asked);
      const common = {
        topic: 'heat',
        source: 'press cycles computed separately for the demo presses',
        evidence: 'independent',
        inputs: what,
        unit: 's',
        tolerance: 0.5,
        why: elsewhere,
      } as const;
      checkAgainst({ ...common, id: `PCYC-01 ready, ${what}`, published: ready_s, ours: ready.value });
      checkAgainst({ ...common, id: `PCYC-01 open, ${what}`, published: open_s, ours: open.value });
    }
  });

  it('[PCYC-02] the three belts of the light press take 17 to 18 min (common practice, no source)', () => {
    for (const position of ['QM-01-1', 'QM-03-1', 'QM-04-3']) {
      const minutes = cycleOf(position).open.value / 60;
      expect(minutes).toBeGreaterThan(17);
      expect(minutes).toBeLessThan(18);
    }
  });

  it('[PCYC-03] length and section give the resistance of the lead; what was measured wins; an extension adds', () => {
    // IEC 60228 class 5: 26.0, 7.98 and 13.3 ohm/km for 0.75, 2.5 and 1.5 mm2, there and back.
    expect(cycleOf('QM-01-1', { press: 'P2' }).lead.value).toBeCloseTo(2 * 60 * 0.026, 9);
    expect(cycleOf('QM-01-1').lead.value).toBeCloseTo(2 * 5 * 0.00798, 9);
    expect(cycleOf('QM-06-1').lead.value).toBeCloseTo(2 * 5 * 0.00798 + 2 * 20 * 0.0133, 9);
    const measured = cycleOf('QM-01-1', { plant: withPress({ leadResistance_ohm: 0.5 }) });
    expect(measured.lead).toMatchObject({ value: 0.5, source: 'example' });
    const thick = cycleOf('QM-01-1', { plant: withPress({ leadSection_m2: 2e-6 }) });
    expect(thick.lead.value, 'between two sizes, in proportion from the smaller').toBeCloseTo(
      (10 * 0.0133 * 1.5) / 2,
      9,
    );
  });

  it('[PCYC-04] South is about 12 % late on its lead and warns; North is not and does not', () => {
    const { ready, delay } = cycleOf('QM-01-1', { press: 'P2' });
    expect(delay.value / (ready.value - delay.value)).toBeGreaterThan(0.11);
    expect(delay.value / (ready.value - delay.value)).toBeLessThan(0.13);
    expect(codes('QM-01-1', { press: 'P2' })).toContain('press-late');
    expect(cycleOf('QM-01-1').delay.value).toBeLessThan(5);
    expect(codes('QM-01-1')).not.toContain('press-late');
  });

  it('[PCYC-05] what nobody said is an example with its range, what the plant holds keeps its source', () => {
    const of = (cycle: PressCycle, field: string) => cycle.numbers.find((number) => number.field === field)?.quantity;
    const bare = cycleOf('QM-01-1');
    expect(of(bare, 'presses.platenLoss')).toMatchObject({ value: 8, low: 5, high: 12, source: 'example' });
    expect(of(bare, 'presses.platenCapacity')).toMatchObject({ value: 25_300, source: 'computed' });
    expect(of(bare, 'lines.outletVoltage')).toMatchObject({ value: 230, source: 'person' });
    const told = withPress({ platenLoss_W_m2K: 11, sources: { platenLoss_W_m2K: 'measured' } });
    expect(of(cycleOf('QM-01-1', { plant: told }), 'presses.platenLoss')).toEqual({
      value: 11,
      kind: 'heatTransfer',
      source: 'measured',
    });
  });

  it('[PCYC-06] the range holds the time line of mains a tenth low or high and of air warmer or colder', () => {
    const { open, ready } = cycleOf('QM-01-1', on(120));
    for (const { open: other, ready: otherReady } of [on(108), on(132), on(120, 15), on(120, 30)].map((asked) =>
      cycleOf('QM-01-1', asked),
    )) {
      expect(other.value).toBeGreaterThan(open.low ?? 0);
      expect(other.value).toBeLessThan(open.high ?? 0);
      expect(otherReady.value).toBeGreaterThanOrEqual((ready.low ?? 0) - 1e-6);
      expect(otherReady.value).toBeLessThanOrEqual((ready.high ?? 0) + 1e-6);
    }
    expect(open.uncalibrated).toBe(true);
  });

  it('[PCYC-07] what somebody says of today comes before what the line holds', () => {
    const { volts, air, fed } = cycleOf('QM-01-1', { today: { volts_V: 215, breaker_A: 10, air_degC: 8 } });
    expect(volts).toMatchObject({ value: 215, source: 'person' });
    expect(air).toMatchObject({ value: 8, low: 3, high: 13 });
    expect(fed.limit?.value).toBeCloseTo(8, 12);
  });

  it('[PCYC-08] more than 80 % of the breaker stops; a breaker that nobody noted is asked for', () => {
    const asked = on(120);
    expect(report('QM-01-1', { ...asked, today: { volts_V: 120, breaker_A: 10 } }).warnings[0]).toMatchObject({
      code: 'outlet-overloaded',
      level: 'stop',
    });
    expect(codes('QM-01-1', { ...asked, today: { volts_V: 120, breaker_A: 15 } })).not.toContain('outlet-overloaded');
    const { outletBreaker_A: _, ...line } = demoPlant.lines['QM-01'] as Line;
    const plant = { ...demoPlant, lines: { ...demoPlant.lines, 'QM-01': line } };
    expect(codes('QM-01-1', { plant })).toContain('outlet-unknown');
  });

  it('[PCYC-09] platens that never get hot give no cycle but a reason, and the card goes on', () => {
    const plant = withPress({ heaterPower_W: 100 });
    expect(report('QM-04-3', { plant }).cycle).toMatchObject({ status: 'none', code: 'set-point-not-reached' });
    expect(codes('QM-04-3', { plant })).toEqual(['no-cycle']);
    const card = spliceCard(plant, 'QM-04-3', { now, press: 'P1' });
    expect(card.warnings.map(({ code }) => code)).toContain('no-cycle');
    expect(card.lengths?.tipToTip.value).toBeCloseTo(64.302, 3);
    expect(card.press.openAt).toBeUndefined();
  });

  it('[PCYC-10] a layer of no thickness is not laid; joints lie between what is', () => {
    const things = {
      line: demoPlant.lines['QM-01'] as Line,
      belt: demoPlant.belts['Alder-24'] as Belt,
      press: { ...(demoPlant.presses['P1'] as Press), pressPlate_m: 0, releaseCloth_m: 0 },
      recipe: demoPlant.recipes['alder-north'] as Recipe,
      template: { ...Object.values(demoPlant.templates)[0], mat_m: 0 } as Plant['templates'][string],
    };
    const { input } = cycleGround(things);
    expect(input.layers.map(({ name }) => name)).toEqual([
      'belts.rollerCover',
      'belts.tensionMember',
      'belts.pulleyCover',
    ]);
    expect(input.contacts_W_m2K).toEqual([1500, null, null, 1500]);
    expect(input.layers.reduce((sum, { thickness_m }) => sum + thickness_m, 0)).toBeCloseTo(0.0024, 12);
    const whole = cycleGround({ ...things, press: demoPlant.presses['P1'] as Press }).input;
    expect(whole.contacts_W_m2K).toEqual([3000, 1000, 1500, null, null, 1500]);
  });

  it('[PCYC-11] a cool right edge is graded of its own and warns when the splice suffers there', () => {
    expect(cycleOf('QM-01-1', { press: 'P2' }).edge).toMatchObject({ grade: 'good' });
    const plant = withPress({ rightEdge_K: -25 }, 'P2');
    expect(cycleOf('QM-01-1', { press: 'P2', plant }).edge?.grade).toBe('not-filled');
    expect(codes('QM-01-1', { press: 'P2', plant })).toContain('edge-not-good');
  });

  it('[PCYC-12] the card takes the computed time line and its range into the time needed', () => {
    const { press, timeParts } = spliceCard(demoPlant, 'QM-04-3', { now });
    const cycle = cycleOf('QM-04-3');
    expect(press.openAt).toEqual(cycle.open);
    expect(timeParts.find(({ code }) => code === 'press')?.time).toEqual(cycle.open);
  });

  it('[PCYC-13] without press or recipe there is no cycle, and nothing else is lost', () => {
    const { cycle, press, warnings } = report('QM-04-3', { press: 'P2' });
    expect(cycle).toBeUndefined();
    expect(press?.id).toBe('P2');
    expect(warnings).toEqual([]);
  });

  it('[PCYC-14] the curve starts at the air, ends at the opening, and stands still between its marks', () => {
    const { curve, open, ready, air } = cycleOf('QM-04-3');
    expect(curve.times_s[0]).toBe(0);
    expect(curve.times_s.at(-1)).toBe(open.value);
    expect(curve.times_s).toContain(ready.value);
    for (const line of [curve.topPlaten, curve.beltMiddle, curve.bottomSensor]) {
      expect(line).toHaveLength(curve.times_s.length);
      expect(line[0]).toBeCloseTo(air.value, 6);
    }
    expect(curve.bottomSensor.at(-1)).toBeLessThanOrEqual(50.01);
    const grows = (line: readonly number[]) => line.every((value, i) => value >= (line[i - 1] ?? 0) - 1e-12);
    for (const line of [curve.bond, curve.fill_m, curve.damage]) expect(grows(line)).toBe(true);
  });
});
