import type { CurveLine, PressCycle } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { type PlotAxis, type PlotLine, plot } from '../../drawing/plot.ts';
import type { Point, Stroke } from '../../drawing/shapes.ts';
import { written } from '../figure.ts';
import type { Block } from '../page.ts';

const width = 366;
const minute_s = 60;
/** What of the molar mass may be lost before a splice counts as over-fused; a prior without a source. */
const damageLimit = 0.05;
/** The share axis ends here; a gap filled further runs out at the top. */
const mostShare = 2.5;

interface Drawn {
  readonly cycle: PressCycle;
  /** Speaks temperatures as the display of the press does. */
  readonly display: Voice;
  readonly voice: Voice;
}

/** Temperatures of platens, sensors and belt, and below them bond, fill and damage, over the same time. */
export function cycleCurves(drawn: Drawn): Block[] {
  return [
    { kind: 'drawing', drawing: temperatures(drawn) },
    { kind: 'drawing', drawing: fusion(drawn) },
  ];
}

function temperatures({ cycle, display, voice }: Drawn) {
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
    width,
    fieldHeight: 110,
    x: timeAxis(cycle, voice),
    y: temperatureAxis(cycle, display),
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

function fusion({ cycle, voice }: Drawn) {
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
    width,
    fieldHeight: 56,
    x: timeAxis(cycle, voice),
    y: {
      min: 0,
      max: mostShare,
      unit: '%',
      ticks: [0, 0.5, 1, 1.5, 2, 2.5].map((at) => ({ at, text: voice.number(100 * at, 0) })),
    },
    level: 1,
    uprights: momentsOf(cycle, voice),
    lines: [
      line('bond', curve.bond, { width: 1.8, ink: 'accent' }),
      line('fill', fill, { width: 1.4, dash: [4, 1.5] }),
      line('damage', damage, { width: 1, dash: [1, 1.5] }),
    ],
  });
}

function pointsOf({ curve }: PressCycle, values: CurveLine): Point[] {
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

function timeAxis({ open }: PressCycle, voice: Voice): PlotAxis {
  const by = Math.max(1, step(open.value / minute_s, 10));
  return {
    min: 0,
    max: open.value,
    unit: 'min',
    ticks: ticksOf(0, open.value / minute_s, by).map((at) => ({ at: at * minute_s, text: voice.number(at, 0) })),
  };
}

/** Ticks stand at round numbers of the unit that is shown. */
function temperatureAxis({ curve }: PressCycle, display: Voice): PlotAxis {
  const hottest = Math.max(...curve.topPlaten, ...curve.bottomPlaten, ...curve.beltBottom);
  const coldest = Math.min(0, ...curve.beltTop);
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
