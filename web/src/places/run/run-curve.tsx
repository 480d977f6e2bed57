import type { RunCurve } from '@loopwright/jobs/press-run';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';

const width = 358;
const height = 92;
const foot = 10;
const head = 12;

/** The predicted curve is the progress: done in the accent, the dot is now, what was read stands over it. */
export function RunCurveView({ curve }: { readonly curve: RunCurve }) {
  const speech = useSpeech();
  const { words, display } = useRunShown();
  const { times_s, top_degC, now_s, expectedTop_degC, expectedBottom_degC, open_degC, marks, readings } = curve;
  const hottest = Math.max(...top_degC, ...readings.map((each) => each.top_degC));
  const x = (time_s: number) => (time_s / Math.max(marks.open_s, 1)) * (width - 16) + 8;
  const y = (value: number) => head + (1 - value / hottest) * (height - head - foot);
  const points = times_s.map((time_s, i) => ({ time_s, value: top_degC[i] ?? 0 }));
  const dot = { time_s: now_s, value: expectedTop_degC };
  const line = (part: typeof points) =>
    `M${part.map(({ time_s, value }) => `${x(time_s).toFixed(1)} ${y(value).toFixed(1)}`).join('L')}`;
  const phases = [
    { word: 'heating', from: 0, to: marks.ready_s },
    { word: 'holding', from: marks.ready_s, to: marks.holdEnd_s },
    { word: 'cooling', from: marks.holdEnd_s, to: marks.open_s },
  ] as const;
  const read = speech.say('runs.both-read', {
    top: display.write(expectedTop_degC, 'temperature'),
    bottom: display.write(expectedBottom_degC, 'temperature'),
  });
  const said = `${words.line('display-should-read')}: ${read}`;
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
        <path
          d={line([dot, ...points.filter(({ time_s }) => time_s > now_s)])}
          className="line-soft fill-none"
          strokeWidth="4"
          strokeLinejoin="round"
        />
        <path
          d={line([...points.filter(({ time_s }) => time_s < now_s), dot])}
          className="line-accent fill-none"
          strokeWidth="6"
          strokeLinejoin="round"
        />
        {readings.map(({ time_s, top_degC: top }) => (
          <path
            key={time_s}
            d={`M${x(time_s) - 6} ${y(top)}h12m-6 -6v12`}
            className="line-ink fill-none"
            strokeWidth="3"
          />
        ))}
        <circle cx={x(now_s)} cy={y(expectedTop_degC)} r="9" className="fill-ink" />
        <text
          x={(x(marks.ready_s) + x(marks.holdEnd_s)) / 2}
          y={y(open_degC) - 5}
          textAnchor="middle"
          fontSize="14"
          className="fill-soft"
        >
          {display.write(open_degC, 'temperature')}
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
