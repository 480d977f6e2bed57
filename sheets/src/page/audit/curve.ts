import type { AuditCycle, AuditReport } from '@loopwright/jobs/audit-report';
import { type Plot, type PlotLine, plot } from '../../drawing/plot.ts';
import { degreesAxis, timeAxis } from '../cycle/curves.ts';
import type { Drawing } from '../page.ts';
import type { AuditReader } from './reader.ts';

type Curve = Extract<NonNullable<AuditReport['record']['predicted']>['cycle'], { status: 'ok' }>['curve'];

/** Computed and read temperatures of one time in the press over the same time; undefined where there is nothing to draw. */
export function auditCurve(reader: AuditReader, cycle: AuditCycle): Drawing | undefined {
  const { report, voice, display } = reader;
  const predicted = report.record.predicted?.cycle;
  const curve = predicted?.status === 'ok' ? predicted.curve : undefined;
  const read = readLines(reader, cycle);
  const lines = [...computedLines(reader, curve), ...loggedLines(reader, cycle), ...read];
  const points = lines.flatMap((line) => line.points);
  if (points.length === 0) return undefined;
  const uprights = momentsOf(reader, cycle);
  const end_s = Math.max(60, ...points.map(({ x }) => x), ...uprights.map(({ at }) => at));
  const temperatures = points.map(({ y }) => y);
  return plot({
    id: `audit-curve-${cycle.attempt}`,
    alt: voice.say('audit.drawing', { readings: cycle.readings.length, marks: wordsOfMarks(reader, cycle) }),
    width: reader.curve.width,
    fieldHeight: reader.curve.height,
    x: timeAxis(end_s, voice),
    y: degreesAxis(Math.min(0, ...temperatures), Math.max(...temperatures), display),
    uprights,
    lines: [...lines, ...openingLine(reader, end_s)],
  });
}

function computedLines({ voice }: AuditReader, curve: Curve | undefined): PlotLine[] {
  if (curve === undefined) return [];
  const line = (name: 'top' | 'bottom' | 'belt', values: readonly number[], stroke: PlotLine['stroke']): PlotLine => ({
    label: voice.say(`audit.line.${name}`),
    points: curve.times_s.map((x, i) => ({ x, y: values[i] ?? 0 })),
    stroke,
  });
  return [
    line('top', curve.top_degC, { width: 0.7 }),
    line('bottom', curve.bottom_degC, { width: 0.7, dash: [6, 2] }),
    line('belt', curve.belt_degC, { width: 0.6, dash: [1, 2], ink: 'soft' }),
  ];
}

/** Readings stand as marks, joined by a thin line: between them nobody looked. */
function readLines({ voice }: AuditReader, { readings }: AuditCycle): PlotLine[] {
  const line = (
    name: 'read-top' | 'read-bottom',
    of: 'top_degC' | 'bottom_degC',
    mark: 'cross' | 'ring',
  ): PlotLine => ({
    label: voice.say(`audit.line.${name}`),
    points: readings.flatMap((reading) =>
      reading.time_s === undefined ? [] : [{ x: reading.time_s, y: reading[of] }],
    ),
    stroke: { width: 0.4, dash: [2, 2], ink: 'accent' },
    mark,
  });
  return [line('read-top', 'top_degC', 'cross'), line('read-bottom', 'bottom_degC', 'ring')].filter(
    ({ points }) => points.length > 0,
  );
}

/** What a logger kept; where it kept nothing, its neighbours are joined. */
function loggedLines({ voice }: AuditReader, { logged }: AuditCycle): PlotLine[] {
  if (logged === undefined) return [];
  const { times_s, top_degC, bottom_degC = [] } = logged.curve;
  const line = (name: 'logged-top' | 'logged-bottom', values: readonly (number | null)[]): PlotLine => ({
    label: voice.say(`audit.line.${name}`),
    points: times_s.flatMap((x, i) => {
      const y = values[i] ?? undefined;
      return y === undefined ? [] : [{ x, y }];
    }),
    stroke: { width: 0.7, ink: 'accent', ...(name === 'logged-bottom' && { dash: [4, 1] }) },
  });
  return [line('logged-top', top_degC), line('logged-bottom', bottom_degC)].filter(({ points }) => points.length > 0);
}

function openingLine({ report, voice, display }: AuditReader, end_s: number): PlotLine[] {
  const { open_degC } = report;
  if (open_degC === undefined) return [];
  const points = [0, end_s].map((x) => ({ x, y: open_degC }));
  const label = voice.say('audit.line.open', { temperature: display.write(open_degC, 'temperature') });
  return [{ label, points, stroke: { width: 0.5, dash: [8, 2, 1, 2] } }];
}

function momentsOf({ voice }: AuditReader, { marks }: AuditCycle): Plot['uprights'] {
  return marks.flatMap(({ mark, real }) =>
    real === undefined ? [] : [{ at: real.value_s, label: voice.say(`audit.mark.${mark}`) }],
  );
}

function wordsOfMarks({ voice }: AuditReader, { marks }: AuditCycle): string {
  return voice.list(
    marks.flatMap(({ mark, real }) =>
      real === undefined ? [] : [`${voice.say(`audit.mark.${mark}`)} ${voice.write(real.value_s, 'time')}`],
    ),
  );
}
