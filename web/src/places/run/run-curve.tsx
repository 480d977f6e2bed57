import type { RunCurve } from '@loopwright/jobs/press-run';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';

const width = 358;
const height = 106;
const foot = 24;
const head = 12;

/** The predicted curve is the progress: done in the accent, the dot is now, what was read stands over it. */
export function RunCurveView({ curve }: { readonly curve: RunCurve }) {
  const speech = useSpeech();
  const { words } = useRunShown();
  const { times_s, top_degC, now_s, expectedTop_degC, open_degC, marks, readings } = curve;
  const hottest = Math.max(...top_degC, ...readings.map((each) => each.top_degC));
  const x = (time_s: number) => (time_s / Math.max(marks.open_s, 1)) * (width - 16) + 8;
  const y = (value: number) => head + (1 - value / hottest) * (height - head - foot);
  const line = (from_s: number, to_s: number) => {
    const inside = times_s.flatMap((time, i) => (time > from_s && time < to_s ? [[time, top_degC[i] ?? 0]] : []));
    const ends = [[from_s, valueAt(curve, from_s)], ...inside, [to_s, valueAt(curve, to_s)]];
    return `M${ends.map(([time = 0, value = 0]) => `${x(time).toFixed(1)} ${y(value).toFixed(1)}`).join('L')}`;
  };
  const now = Math.min(now_s, marks.open_s);
  const phases = [
    { word: 'heating', from: 0, to: marks.ready_s },
    { word: 'holding', from: marks.ready_s, to: marks.holdEnd_s },
    { word: 'cooling', from: marks.holdEnd_s, to: marks.open_s },
  ] as const;
  const read = speech.write(expectedTop_degC, 'temperature');
  const said = `${words.line('display-should-read')}: ${read}`;
  const left = x(now) > width / 2;
  return (
    <figure className="run-curve">
      <p className="run-should">
        <span className="soft">{words.line('display-should-read')}</span> <strong>{read}</strong>
      </p>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={said}>
        <path
          d={`M8 ${y(open_degC)}H${width - 8}`}
          className="line-care fill-none"
          strokeDasharray="3 6"
          strokeWidth="2"
        />
        <path d={`M8 ${height - foot}H${width - 8}`} className="line-soft fill-none" strokeWidth="1" />
        <path d={line(now, marks.open_s)} className="line-soft fill-none" strokeWidth="4" strokeLinejoin="round" />
        <path d={line(0, now)} className="line-accent fill-none" strokeWidth="6" strokeLinejoin="round" />
        {readings.map(({ time_s, top_degC: top }) => (
          <path
            key={time_s}
            d={`M${x(time_s) - 6} ${y(top)}h12m-6 -6v12`}
            className="line-ink fill-none"
            strokeWidth="3"
          />
        ))}
        <circle cx={x(now)} cy={y(valueAt(curve, now))} r="9" className="fill-ink" />
        <text
          x={left ? 10 : width - 10}
          y={y(open_degC) - 5}
          textAnchor={left ? 'start' : 'end'}
          fontSize="14"
          className="fill-soft"
        >
          {speech.write(open_degC, 'temperature')}
        </text>
      </svg>
      <div className="caption run-phases" aria-hidden="true">
        {phases.map(({ word, from, to }) => (
          <span key={word} style={{ flexGrow: Math.max(to - from, marks.open_s * 0.2) }}>
            {speech.say(`runs.phase.${word}`)}
          </span>
        ))}
      </div>
    </figure>
  );
}

function valueAt({ times_s, top_degC }: RunCurve, at_s: number): number {
  const after = times_s.findIndex((time) => time >= at_s);
  if (after <= 0) return top_degC[after < 0 ? top_degC.length - 1 : 0] ?? 0;
  const [t0 = 0, t1 = 0] = [times_s[after - 1], times_s[after]];
  const [y0 = 0, y1 = 0] = [top_degC[after - 1], top_degC[after]];
  return t1 === t0 ? y1 : y0 + ((y1 - y0) * (at_s - t0)) / (t1 - t0);
}
