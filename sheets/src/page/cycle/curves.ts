import type { CurveLine, PressCycle } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { type PlotAxis, type PlotLine, plot } from '../../drawing/plot.ts';
import type { Point, Stroke } from '../../drawing/shapes.ts';
import { written } from '../figure.ts';
import type { Block, Drawing } from '../page.ts';

const minute_s = 60;
/** What of the molar mass may be lost before a splice counts as over-fused; a prior without a source. */
export const damageLimit = 0.05;
/** The share axis ends here; a gap filled further runs out at the top. */
export const mostShare = 2.5;

/** How large a curve is drawn: on a phone narrower, so that its letters come out larger. */
export interface CurveSize {
  readonly width: number;
  readonly temperatures: number;
  readonly fusion: number;
}

const paperSize: CurveSize = { width: 366, temperatures: 110, fusion: 56 };

export interface Drawn {
  readonly cycle: PressCycle;
  /** Speaks temperatures as the display of the press does. */
  readonly display: Voice;
  readonly voice: Voice;
  readonly size?: CurveSize | undefined;
}

/** Temperatures of platens, sensors and belt, and below them bond, fill and damage, over the same time. */
export function cycleCurves(drawn: Drawn): Block[] {
  return [
    { kind: 'drawing', drawing: temperatureCurves(drawn) },
    { kind: 'drawing', drawing: fusionCurves(drawn) },
  ];
}

/** Temperatures of platens, sensors and belt over the cycle. */
export function temperatureCurves({ cycle, display, voice, size = paperSize }: Drawn): Drawing {
  const { curve, ready, dwellEnd, open, belt } = cycle;
  const line = (name: LineName, values: CurveLine, stroke: Stroke): PlotLine => ({
    label: voice.say(`cycle.line.${name}`),
    points: pointsOf(cycle, values),
    stroke,
  });
  return plot({
    id: 'cycle-temperatures',
    alt: voice.say('cycle.drawing', {
      ready: written(ready, voice),
      end: written(dwellEnd, voice),
      open: written(open, voice),
      peak: written(belt.peak, display),
    }),
    width: size.width,
    fieldHeight: size.temperatures,
    x: timeAxis(open.value, voice),
    y: temperatureAxis([cycle], display),
    uprights: momentsOf(cycle, voice),
    lines: [
      line('top-platen', curve.topPlaten, { width: 0.7 }),
      line('bottom-platen', curve.bottomPlaten, { width: 0.7, dash: [6, 2] }),
      { ...line('sensors', curve.topSensor, { width: 0.5, dash: [1, 2], ink: 'soft' }) },
      line('belt-top', curve.beltTop, { width: 1.4, ink: 'accent', dash: [4, 1.5] }),
      line('belt-middle', curve.beltMiddle, { width: 1.8, ink: 'accent' }),
      line('belt-bottom', curve.beltBottom, { width: 1.4, ink: 'accent', dash: [1.5, 1.5] }),
    ],
  });
}

type LineName =
  | 'top-platen'
  | 'bottom-platen'
  | 'sensors'
  | 'belt-top'
  | 'belt-middle'
  | 'belt-bottom'
  | 'bond'
  | 'fill'
  | 'damage';

/** Bond, fill and damage over the cycle, each as a share of what is wanted of it. */
export function fusionCurves({ cycle, voice, size = paperSize }: Drawn): Drawing {
  const { curve, belt } = cycle;
  const fill = curve.fill_m.map((depth) => depth / belt.fillNeeded.value);
  const damage = curve.damage.map((share) => share / damageLimit);
  const percent = (value: number): string => voice.write(value, 'percent', { digits: 0 });
  const line = (name: LineName, values: CurveLine, stroke: Stroke): PlotLine => ({
    label: voice.say(`cycle.line.${name}`),
    points: pointsOf(
      cycle,
      values.map((value) => Math.min(value, mostShare)),
    ),
    stroke,
  });
  return plot({
    id: 'cycle-fusion',
    alt: voice.say('cycle.fusion-drawing', {
      bond: percent(belt.bond.value),
      fill: percent(fill.at(-1) ?? 0),
      damage: percent(damage.at(-1) ?? 0),
    }),
    width: size.width,
    fieldHeight: size.fusion,
    x: timeAxis(cycle.open.value, voice),
    y: shareAxis(voice),
    level: 1,
    uprights: momentsOf(cycle, voice),
    lines: [
      line('bond', curve.bond, { width: 1.8, ink: 'accent' }),
      line('fill', fill, { width: 1.4, dash: [4, 1.5] }),
      line('damage', damage, { width: 1, dash: [1, 1.5] }),
    ],
  });
}

export function shareAxis(voice: Voice): PlotAxis {
  const ticks = [0, 0.5, 1, 1.5, 2, 2.5].map((at) => ({ at, text: voice.number(100 * at, 0) }));
  return { min: 0, max: mostShare, unit: '%', ticks };
}

export function pointsOf({ curve }: PressCycle, values: CurveLine): Point[] {
  return curve.times_s.map((x, i) => ({ x, y: values[i] ?? 0 }));
}

function momentsOf({ belt, ready, dwellEnd, open }: PressCycle, voice: Voice) {
  return [
    ...(belt.flowStart ? [{ at: belt.flowStart.value, label: voice.say('cycle.mark.flow') }] : []),
    { at: ready.value, label: voice.say('cycle.mark.ready') },
    { at: dwellEnd.value, label: voice.say('cycle.mark.hold-end') },
    { at: open.value, label: voice.say('cycle.mark.open') },
  ];
}

/** Steps of 1, 2 or 5 of a power of ten, so that at most `most` fit. */
function step(span: number, most: number): number {
  const power = 10 ** Math.floor(Math.log10(span / most));
  return [1, 2, 5, 10].map((each) => each * power).find((each) => span / each <= most) ?? span;
}

function ticksOf(min: number, max: number, by: number): number[] {
  const first = Math.ceil(min / by - 1e-9);
  return Array.from({ length: Math.floor(max / by + 1e-9) - first + 1 }, (_, i) => (first + i) * by);
}

export function timeAxis(end_s: number, voice: Voice): PlotAxis {
  const by = Math.max(1, step(end_s / minute_s, 10));
  return {
    min: 0,
    max: end_s,
    unit: 'min',
    ticks: ticksOf(0, end_s / minute_s, by).map((at) => ({ at: at * minute_s, text: voice.number(at, 0) })),
  };
}

/** Ticks stand at round numbers of the unit that is shown. */
export function temperatureAxis(cycles: readonly PressCycle[], display: Voice): PlotAxis {
  const curves = cycles.map(({ curve }) => curve);
  const hottest = Math.max(
    ...curves.flatMap(({ topPlaten, bottomPlaten, beltBottom }) => [...topPlaten, ...bottomPlaten, ...beltBottom]),
  );
  return degreesAxis(Math.min(0, ...curves.flatMap(({ beltTop }) => beltTop)), hottest, display);
}

/** From the coldest to a little above the hottest [degC]. */
export function degreesAxis(coldest: number, hottest: number, display: Voice): PlotAxis {
  const us = display.units === 'us';
  const shown = (degC: number): number => (us ? degC * 1.8 + 32 : degC);
  const inside = (value: number): number => (us ? (value - 32) / 1.8 : value);
  const by = us ? 100 : 50;
  const max = Math.ceil((shown(hottest) + 1) / (by / 5)) * (by / 5);
  const min = Math.floor(shown(coldest) / by) * by;
  return {
    min: inside(min),
    max: inside(max),
    unit: display.show(hottest, 'temperature').unit,
    ticks: ticksOf(min, max, by).map((at) => ({ at: inside(at), text: display.number(at, 0) })),
  };
}
