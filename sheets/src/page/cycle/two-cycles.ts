import type { CurveLine, PressCycle } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { type PlotLine, plot } from '../../drawing/plot.ts';
import type { Stroke } from '../../drawing/shapes.ts';
import { written } from '../figure.ts';
import type { Drawing } from '../page.ts';
import { type CurveSize, damageLimit, mostShare, pointsOf, shareAxis, temperatureAxis, timeAxis } from './curves.ts';

/** Two cycles over one time. */
export interface TwoCycles {
  readonly now: PressCycle;
  readonly kept: PressCycle;
  /** Speaks temperatures as the display of the press does. */
  readonly display: Voice;
  readonly voice: Voice;
  readonly size: CurveSize;
}

/** Solid is what is tried now, dashed what was kept; the legend says it in words. */
const strokes: Readonly<Record<'now' | 'kept', Stroke>> = { now: {}, kept: { dash: [5, 2.5] } };
const sides = ['now', 'kept'] as const;

/** Top platen and middle of the belt of two cycles. */
export function twoTemperatureCurves(two: TwoCycles): Drawing {
  const { now, kept, voice, display, size } = two;
  return plot({
    id: 'cycle-temperatures',
    alt: voice.say('recipes.two.drawing', {
      now: written(now.belt.peak, display),
      kept: written(kept.belt.peak, display),
      open: written(now.open, voice),
      keptOpen: written(kept.open, voice),
    }),
    width: size.width,
    fieldHeight: size.temperatures,
    x: timeAxis(longest_s(two), voice),
    y: temperatureAxis([now, kept], display),
    uprights: openings(two),
    lines: [
      ...pair(two, 'top-platen', ({ curve }) => curve.topPlaten, { width: 0.7 }),
      ...pair(two, 'belt-middle', ({ curve }) => curve.beltMiddle, { width: 1.8, ink: 'accent' }),
    ],
  });
}

/** Bond and damage of two cycles. */
export function twoFusionCurves(two: TwoCycles): Drawing {
  const { now, kept, voice, size } = two;
  const percent = ({ value }: PressCycle['belt']['bond']): string => voice.write(value, 'percent', { digits: 0 });
  const damage = ({ curve }: PressCycle): CurveLine => curve.damage.map((share) => share / damageLimit);
  return plot({
    id: 'cycle-fusion',
    alt: voice.say('recipes.two.fusion', { now: percent(now.belt.bond), kept: percent(kept.belt.bond) }),
    width: size.width,
    fieldHeight: size.fusion,
    x: timeAxis(longest_s(two), voice),
    y: shareAxis(voice),
    level: 1,
    uprights: openings(two),
    lines: [
      ...pair(two, 'bond', ({ curve }) => curve.bond, { width: 1.8, ink: 'accent' }),
      ...pair(two, 'damage', damage, { width: 0.8 }),
    ],
  });
}

const longest_s = ({ now, kept }: TwoCycles): number => Math.max(now.open.value, kept.open.value);

function openings(two: TwoCycles) {
  return sides.map((side) => ({
    at: two[side].open.value,
    label: two.voice.say(`recipes.two.open-${side}`),
  }));
}

function pair(
  two: TwoCycles,
  name: 'top-platen' | 'belt-middle' | 'bond' | 'damage',
  values: (cycle: PressCycle) => CurveLine,
  stroke: Stroke,
): PlotLine[] {
  return sides.map((side) => ({
    label: two.voice.say(`recipes.two.${side}`, { line: two.voice.say(`cycle.line.${name}`) }),
    points: pointsOf(
      two[side],
      values(two[side]).map((value) => (name === 'bond' || name === 'damage' ? Math.min(value, mostShare) : value)),
    ),
    stroke: { ...stroke, ...strokes[side] },
  }));
}
