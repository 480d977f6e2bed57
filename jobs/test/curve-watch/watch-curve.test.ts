import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { coolingRate_K_s, lineOf, predictedLine, rampSlope_K_s } from '../../src/curve-watch/curve-features.ts';
import {
  type CurveReading,
  forecastReady_s,
  silentCauses,
  type WatchAsked,
  watchCauses,
  watchCodes,
  watchCurve,
  watchLimits,
} from '../../src/curve-watch/index.ts';
import { exact, type Happened, happens, input, mains, predicted, recipe, set } from './cycles.ts';

const asked = (readings: readonly CurveReading[], more: Partial<WatchAsked> = {}): WatchAsked => ({
  predicted: exact,
  readings,
  kept: 'logger',
  set,
  dwell_s: recipe.dwell_s,
  open_degC: recipe.open_degC,
  ...more,
});
const codesOf = (given: WatchAsked): readonly string[] =>
  watchCurve(given).map(({ code, side }) => (side ? `${code} ${side}` : code));

const usual = happens();
const sagging = happens(mains(0.9));
const halfTop = happens({ top: { ...input.top, heater_W: input.top.heater_W / 2 } });
const halfFan = happens({
  top: { ...input.top, fan_W_m2K: input.top.fan_W_m2K / 2 },
  bottom: { ...input.bottom, fan_W_m2K: input.bottom.fan_W_m2K / 2 },
});

/** Readings as somebody takes them with a stepper: whole degrees, at a few moments. */
function read({ readings }: Happened, times_s: readonly number[]): readonly CurveReading[] {
  return times_s.map((at_s) => {
    const near = readings.findLast(({ time_s }) => time_s <= at_s) ?? readings[0];
    return {
      time_s: near?.time_s ?? 0,
      top_degC: Math.round(near?.top_degC ?? 0),
      bottom_degC: Math.round(near?.bottom_degC ?? 0),
    };
  });
}

/** Normal numbers from a seed: the sum of twelve even ones, less six. */
function normal(seed: number): () => number {
  let state = seed >>> 0;
  const even = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  return () => Array.from({ length: 12 }, even).reduce((a, b) => a + b, -6);
}

describe('a curve that goes as predicted', () => {
  it('[WATCH-01] says nothing, kept by a logger or read off the displays', () => {
    expect(codesOf(asked(usual.readings))).toEqual([]);
    const few = read(usual, [200, 450, 700, 1030]);
    expect(codesOf(asked(few, { kept: 'displays' }))).toEqual([]);
  });

  it('[WATCH-01] noise of half a kelvin and sensors that are off by up to 3 K raise nothing', () => {
    fc.assert(
      fc.property(
        fc.integer(),
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (seed, top_K, bottom_K) => {
          const next = normal(seed);
          const noisy = usual.readings.map(({ time_s, top_degC = 0, bottom_degC = 0 }) => ({
            time_s,
            top_degC: top_degC + top_K + 0.5 * next(),
            bottom_degC: bottom_degC + bottom_K + 0.5 * next(),
          }));
          expect(codesOf(asked(noisy))).toEqual([]);
        },
      ),
      { seed: 42, numRuns: Math.min(60, Number(process.env['LW_RUNS'] ?? 60)) },
    );
  });

  it('[WATCH-01] within the range of mains and air nothing is said: the prediction allows no judgement', () => {
    for (const share of [0.92, 0.95, 1.05, 1.08]) {
      const { readings } = happens(mains(share));
      expect(codesOf(asked(readings, { predicted })), `mains ${share}`).toEqual([]);
    }
    expect(codesOf(asked(happens({ ambient_degC: 29 }).readings, { predicted }))).toEqual([]);
  });

  it('[WATCH-01] what nobody could predict is judged only by what needs no prediction', () => {
    const { predicted: _, ...bare } = asked(sagging.readings);
    expect(codesOf({ ...bare, said: { holdBegan_s: 400, coolingBegan_s: 440 } })).toEqual(['hold-short']);
  });
});

describe('while it heats', () => {
  const levels = [80, 100, 120];
  const largest_s = 3.6;
  const cases = [
    { what: 'mains a tenth low', run: sagging },
    { what: 'mains a tenth high', run: happens(mains(1.1)) },
    { what: 'air of 15 degC', run: happens({ ambient_degC: 15 }) },
    { what: 'air of 32 degC', run: happens({ ambient_degC: 32 }) },
  ];

  it.each(cases)('[WATCH-02] the forecast of ready from 80, 100 and 120 degC comes true: $what', ({ what, run }) => {
    const reference = { line: lineOf(usual.readings, 'top'), ready_s: usual.ready_s, set_degC: set.top_degC };
    const line = lineOf(run.readings, 'top');
    for (const level of levels) {
      const so_far = line.slice(0, line.findIndex(({ value }) => value >= level) + 1);
      checkAgainst({
        topic: 'press-run',
        id: `WATCH-02 forecast at ${level} degC, ${what}`,
        source: 'ready as this cycle has it; largest error of the rule over simulated cycles',
        evidence: 'independent',
        inputs: 'light press, belt of 2.4 mm',
        unit: 's',
        published: run.ready_s,
        ours: forecastReady_s(so_far, reference) ?? Number.NaN,
        tolerance: largest_s,
        why: 'largest error at 80 degC in the cycles of another program',
      });
    }
  });

  it('[WATCH-02] below 80 degC nothing is forecast', () => {
    const line = lineOf(sagging.readings, 'top');
    const cold = line.slice(
      0,
      line.findIndex(({ value }) => value >= 79),
    );
    const reference = { line: predictedLine(exact, 'top'), ready_s: exact.ready_s.value, set_degC: set.top_degC };
    expect(forecastReady_s(cold, reference)).toBeUndefined();
  });

  const slopes = [
    { what: 'mains a tenth low', run: sagging, published: 0.8, side: 'top' },
    {
      what: 'lead that drops 8 %',
      run: happens({ supply: { ...input.supply, volts_V: input.supply.volts_V * 0.92 } }),
      published: 0.84,
      side: 'top',
    },
    { what: 'half of the top heater', run: halfTop, published: 0.6, side: 'top' },
  ] as const;

  it.each(slopes)('[WATCH-03] the ramp is slower by what its cause takes: $what', ({ what, run, published, side }) => {
    const slope = rampSlope_K_s(lineOf(run.readings, side)) ?? Number.NaN;
    const expected = rampSlope_K_s(lineOf(usual.readings, side)) ?? Number.NaN;
    checkAgainst({
      topic: 'press-run',
      id: `WATCH-03 slope from 60 to 150 degC, ${what}`,
      source: 'signatures of causes, another program, another press',
      evidence: 'independent',
      inputs: 'light press, belt of 2.4 mm',
      unit: '1',
      published,
      ours: slope / expected,
      tolerance: 0.07,
      why: 'another press: heat that the two platens lend each other differs; printed to two digits',
    });
  });

  it('[WATCH-03] mains a tenth low on both sides is a slow ramp, with when it will be ready', () => {
    const soFar = sagging.readings.filter(({ time_s }) => time_s <= 300);
    const [warning] = watchCurve(asked(soFar));
    expect(warning).toMatchObject({ code: 'slow-ramp', level: 'care' });
    expect(warning?.side).toBeUndefined();
    expect(warning?.data['forecast_s']).toBeGreaterThan(sagging.ready_s - 4);
    expect(warning?.data['forecast_s']).toBeLessThan(sagging.ready_s + 4);
    expect(warning?.causes).toContain('mains-low');
  });

  it('[WATCH-03] with the mains measured, the lead is blamed', () => {
    const soFar = sagging.readings.filter(({ time_s }) => time_s <= 300);
    const [warning] = watchCurve(asked(soFar, { known: { mains: true, air: true } }));
    expect(warning?.causes[0]).toBe('long-lead');
    expect(warning?.causes).not.toContain('mains-low');
  });

  it('[WATCH-03] one reading of both displays is enough, and says so before the set point', () => {
    const [warning] = watchCurve(asked(read(sagging, [250]), { kept: 'displays' }));
    expect(warning).toMatchObject({ code: 'slow-ramp' });
  });

  it('[WATCH-03] a ramp much faster than predicted: the pressure plate was forgotten', () => {
    const [, ...layers] = input.layers;
    const [, ...contacts_W_m2K] = input.contacts_W_m2K;
    const probes: typeof input.probes = [];
    const { readings } = happens({ layers, contacts_W_m2K, probes, ...mains(1.06) });
    const fast = watchCurve(asked(readings.filter(({ time_s }) => time_s < 350))).find(
      ({ code }) => code === 'fast-ramp',
    );
    expect(fast?.causes[0]).toBe('plate-forgotten');
  });

  it('[WATCH-04] half of one heater: that side is behind the other, by displays or logger', () => {
    for (const kept of ['displays', 'logger'] as const) {
      const readings = kept === 'logger' ? halfTop.readings.filter(({ time_s }) => time_s < 380) : read(halfTop, [220]);
      const warnings = watchCurve(asked(readings, { kept }));
      const behind = warnings.find(({ code }) => code === 'side-slow');
      expect(behind, kept).toMatchObject({ side: 'top', level: 'care' });
      expect(behind?.causes[0], kept).toBe('half-heater');
    }
  });

  it('[WATCH-04] one side behind is told even inside the range of the mains: it moves both sides alike', () => {
    expect(codesOf(asked(read(halfTop, [220]), { predicted, kept: 'displays' }))).toContain('side-slow top');
  });

  it('[WATCH-05] half as long again as it should take, and a display still below the set point: stop', () => {
    const late = { time_s: exact.ready_s.value * 1.6, top_degC: 120, bottom_degC: 121 };
    const warnings = watchCurve(asked([late], { kept: 'displays' }));
    expect(warnings.map(({ code, level }) => [code, level])).toEqual([['set-not-reached', 'stop']]);
    const hot = { ...late, top_degC: set.top_degC, bottom_degC: set.bottom_degC };
    expect(codesOf(asked([hot], { kept: 'displays' }))).not.toContain('set-not-reached');
    const cooled = [
      { time_s: 500, top_degC: 170, bottom_degC: 175 },
      { ...late, top_degC: 60, bottom_degC: 61 },
    ];
    expect(codesOf(asked(cooled, { kept: 'displays' }))).not.toContain('set-not-reached');
  });
});

describe('at the set point', () => {
  const { ready_s, holdEnd_s } = usual;
  const held = (off: { readonly top?: number; readonly bottom?: number }): readonly CurveReading[] =>
    usual.readings.map((each) =>
      each.time_s > ready_s - 20 && each.time_s < holdEnd_s
        ? {
            ...each,
            top_degC: (each.top_degC ?? 0) + (off.top ?? 0),
            bottom_degC: (each.bottom_degC ?? 0) + (off.bottom ?? 0),
          }
        : each,
    );
  const lowTop = usual.readings.map((each) => ({ ...each, top_degC: Math.min(each.top_degC ?? 0, set.top_degC - 6) }));

  it('[WATCH-06] a plateau is low or overshoots beyond 1.5 K, by side', () => {
    expect(codesOf(asked(lowTop, { sensors: 'press' }))).toEqual(['plateau-low top']);
    const few = read({ ...usual, readings: lowTop }, [200, 520]);
    expect(codesOf(asked(few, { kept: 'displays' }))).toEqual(['plateau-low top']);
    expect(codesOf(asked(held({ bottom: 4 }), { sensors: 'press' }))).toContain('overshoot bottom');
    expect(codesOf(asked(held({ top: -1, bottom: 1 }), { sensors: 'press' }))).toEqual([]);
  });

  it('[WATCH-06] above what nothing of a belt should ever be: stop, once', () => {
    const warnings = watchCurve(asked(held({ top: 34 })));
    const hot = warnings.filter(({ side }) => side === 'top');
    expect(hot.map(({ code }) => code)).toContain('above-cap');
    expect(hot.map(({ code }) => code)).not.toContain('overshoot');
  });

  it('[WATCH-06] a plateau that swings: a sensor that is loose', () => {
    const swinging = held({}).map((each) =>
      each.time_s > ready_s && each.time_s < holdEnd_s
        ? { ...each, top_degC: (each.top_degC ?? 0) + 5 * Math.sin(each.time_s / 12) }
        : each,
    );
    const found = watchCurve(asked(swinging)).find(({ code }) => code === 'plateau-unsteady');
    expect(found).toMatchObject({ side: 'top', causes: ['sensor-loose'] });
  });

  it('[WATCH-07] a hold shorter or longer than the recipe by more than a tap or a tenth', () => {
    const said = (held_s: number) => ({ holdBegan_s: 400, coolingBegan_s: 400 + held_s });
    const of = (held_s: number) => codesOf(asked([], { kept: 'displays', said: said(held_s) }));
    expect(of(recipe.dwell_s)).toEqual([]);
    expect(of(recipe.dwell_s - 10)).toEqual([]);
    expect(of(recipe.dwell_s - 40)).toEqual(['hold-short']);
    expect(of(recipe.dwell_s + 40)).toEqual(['hold-long']);
  });

  it('[WATCH-07] a logger shows the hold by itself', () => {
    const short = happens({ recipe: { ...recipeOf(), dwell_s: recipe.dwell_s - 60 } });
    expect(codesOf(asked(short.readings))).toContain('hold-short');
    const long = happens({ recipe: { ...recipeOf(), dwell_s: recipe.dwell_s + 90 } });
    expect(codesOf(asked(long.readings))).toContain('hold-long');
  });
});

function recipeOf(): Extract<typeof input.recipe, { dwell_s: number }> {
  if (!('dwell_s' in input.recipe)) throw new Error('a recipe with steps');
  return input.recipe;
}

describe('while it cools', () => {
  it('[WATCH-08] half a fan: slow cooling, the fan before the air of the hall', () => {
    const warnings = watchCurve(asked(halfFan.readings));
    expect(warnings.map(({ code }) => code)).toContain('cooling-slow');
    expect(warnings.find(({ code }) => code === 'cooling-slow')?.causes.toSorted()).toEqual([
      'fan-blocked',
      'fan-half',
    ]);
  });

  it('[WATCH-08] the rate at 100 degC of a curve is that of its law', () => {
    // Newton's cooling towards 25 degC with 300 s: at 100 degC 75/300 K/s; the chord over 20 K differs by a third of a percent.
    const line = Array.from({ length: 700 }, (_, time_s) => ({ time_s, value: 25 + 150 * Math.exp(-time_s / 300) }));
    checkAgainst({
      topic: 'press-run',
      id: 'WATCH-08 rate of cooling at 100 degC',
      source: 'exponential decay: 300 s ln(85/65) for 110 to 90 degC',
      evidence: 'derived',
      inputs: 'T = 25 + 150 exp(-t/300)',
      unit: 'K/s',
      published: 20 / (300 * Math.log(85 / 65)),
      ours: coolingRate_K_s(line) ?? Number.NaN,
      tolerance: 1e-4,
      why: 'straight lines between points a second apart',
    });
  });

  it('[WATCH-09] opened warm: by the display shortly before, else by the clock', () => {
    const warm = { time_s: 700, top_degC: 90, bottom_degC: 88 };
    const of = (readings: readonly CurveReading[], opened_s: number) =>
      watchCurve(
        asked(readings, {
          kept: 'displays',
          said: { holdBegan_s: usual.ready_s, coolingBegan_s: usual.holdEnd_s, opened_s },
        }),
      );
    expect(of([warm], 710).find(({ code }) => code === 'opened-hot')).toMatchObject({ level: 'stop' });
    expect(
      of([{ time_s: 1000, top_degC: 54, bottom_degC: 53 }], 1010).find(({ code }) => code === 'opened-hot')?.level,
    ).toBe('care');
    expect(of([], 700).map(({ code }) => code)).toContain('opened-hot');
    expect(of([{ time_s: 1040, top_degC: 50, bottom_degC: 49 }], 1050).map(({ code }) => code)).not.toContain(
      'opened-hot',
    );
  });
});

describe('readings that cannot be', () => {
  it('[WATCH-10] a spike is said, left out, and changes no other judgement', () => {
    const spiked = usual.readings.map((each) => (each.time_s === 500 ? { ...each, top_degC: 60 } : each));
    const warnings = watchCurve(asked(spiked));
    expect(warnings.map(({ code, side }) => `${code} ${side}`)).toEqual(['reading-jumps top']);
    expect(warnings[0]?.data).toMatchObject({ at_s: 500, shown_degC: 60, count: 1 });
  });

  it('[WATCH-10] 300 degC, 5 degC in the hold, and colder than the hall are said with what can be', () => {
    const odd = [
      { time_s: 500, top_degC: 300, bottom_degC: set.bottom_degC },
      { time_s: 520, top_degC: set.top_degC, bottom_degC: 5 },
    ];
    const warnings = watchCurve(asked(odd, { kept: 'displays', air_degC: 25 })).filter(
      ({ code }) => code === 'reading-impossible',
    );
    expect(warnings.map(({ side }) => side)).toEqual(['top', 'bottom']);
    expect(warnings[0]?.data).toMatchObject({ shown_degC: 300, most_degC: set.top_degC + 40 });
    expect(warnings[1]?.data).toMatchObject({ shown_degC: 5, least_degC: 10 });
  });

  it('[WATCH-11] where a logger was silent nothing is judged, and the gap is said', () => {
    const holed = usual.readings.filter(({ time_s }) => time_s < 380 || time_s > 640);
    const warnings = watchCurve(asked(holed));
    expect(warnings.map(({ code }) => code)).toEqual(['gap']);
    expect(warnings[0]?.data['length_s']).toBeGreaterThan(250);
  });
});

describe('what a curve cannot show', () => {
  it('[WATCH-12] a wet belt and a cold edge are named as silent, and are no cause of any warning', () => {
    expect(silentCauses).toEqual(['wet-belt', 'edge-cold', 'template-thin']);
    for (const cause of silentCauses) expect(watchCauses).not.toContain(cause);
  });

  it('[WATCH-13] two causes at most, warnings in the order of the table, the order of readings does not matter', () => {
    for (const { readings } of [sagging, halfTop, halfFan]) {
      const warnings = watchCurve(asked(readings));
      const order = warnings.map(({ code }) => watchCodes.indexOf(code));
      expect(order).toEqual(order.toSorted((a, b) => a - b));
      for (const { causes } of warnings) expect(causes.length).toBeLessThanOrEqual(2);
      expect(watchCurve(asked(readings.toReversed()))).toEqual(warnings);
    }
  });

  it('[WATCH-14] a limit that somebody sets counts', () => {
    const readings = usual.readings;
    expect(codesOf(asked(readings, { limits: { ramp_K: 1000, plateau_K: 1000 } }))).toEqual([]);
    const short = { said: { holdBegan_s: 400, coolingBegan_s: 400 + recipe.dwell_s - 10 }, kept: 'displays' as const };
    expect(codesOf(asked([], { ...short, limits: { hold_s: 5, hold_share: 0.01 } }))).toEqual(['hold-short']);
    expect(watchLimits.late_s).toBe(60);
  });
});
