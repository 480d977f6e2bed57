import type { RunTimer, RunView } from '@loopwright/jobs/press-run';
import { useMemo } from 'react';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { clockText, timerText } from './clock-text.ts';
import { CurveWarningView, gravestWarning } from './curve-warning.tsx';
import { useRunShown } from './run-context.tsx';
import { RunCurveView } from './run-curve.tsx';

/** What is waited for: the time to go in digits for three metres, when that will be, and the curve as progress. */
export function WaitView({ brief }: { readonly brief: boolean }) {
  const speech = useSpeech();
  const { state, view, words } = useRunShown();
  const timer = waitedFor(view);
  const isRead = view.reading !== undefined;
  const gravest = useMemo(() => (isRead ? gravestWarning(state) : undefined), [state, isRead]);
  // Once a hand is asked for, how it heated is advice that comes too late; it stays in the record.
  const warning = brief && gravest?.level !== 'stop' ? undefined : gravest;
  const isInPress = view.curve !== undefined || view.keepClosed;
  return (
    <div className="run-wait">
      {timer === undefined ? null : <TimerView timer={timer} brief={brief} />}
      {view.curve === undefined || brief || warning !== undefined ? null : <RunCurveView curve={view.curve} />}
      {warning === undefined ? null : <CurveWarningView warning={warning} />}
      {view.keepClosed ? (
        <p className="run-care">
          <Mark name="care" /> <span>{words.line('keep-closed')}</span>
        </p>
      ) : null}
      {view.next === undefined || isInPress ? null : (
        <p className="soft">
          {speech.say('runs.next')} <strong>{words.step(view.next)}</strong>
        </p>
      )}
    </div>
  );
}

interface TimerViewProps {
  readonly timer: RunTimer;
  /** The moment alone, where a hand is asked for and the digits would push it off the screen. */
  readonly brief: boolean;
}

function TimerView({ timer, brief }: TimerViewProps) {
  const speech = useSpeech();
  const { words } = useRunShown();
  const { left_s, at, sure, code, earliest } = timer;
  const isOver = left_s <= 0;
  const time = clockText(speech, at);
  return (
    <div className="run-timer-block">
      {brief ? null : (
        <p className="run-timer" role="timer" data-over={isOver}>
          {timerText(left_s)}
        </p>
      )}
      <p className="run-when">
        <strong>{words.timer(code)}</strong> {earliest === undefined ? time : words.line('about', { time })}
        {isOver ? ` · ${speech.say('runs.over', { time: timerText(left_s) })}` : ''}
        {code === 'open' && !isOver ? `, ${words.line('when-displays')}` : ''}
      </p>
      {sure === 'steady' ? null : <p className="caption">{words.sure(sure)}</p>}
    </div>
  );
}

/** In the press the moment of opening; else what the current step waits for. */
function waitedFor({ timers, current, curve, keepClosed }: RunView): RunTimer | undefined {
  const code =
    curve !== undefined || keepClosed
      ? 'open'
      : current?.step === 'heat'
        ? 'pressure'
        : current?.step === 'flat'
          ? 'flat'
          : undefined;
  return timers.find((timer) => timer.code === code);
}
