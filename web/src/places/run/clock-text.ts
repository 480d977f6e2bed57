import type { RunView } from '@loopwright/jobs/press-run';
import type { Voice } from '@loopwright/words';

/** A moment as the clock on the wall shows it here, with hours and minutes. */
export function clockText({ language }: Voice, at: string): string {
  return new Date(at).toLocaleTimeString(language, { hour: '2-digit', minute: '2-digit', hour12: false });
}

/** Minutes and seconds to go, as a timer shows them; what is over counts up. */
export function timerText(left_s: number): string {
  const whole_s = Math.ceil(Math.abs(left_s) - (left_s < 0 ? 1 : 0));
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${two(Math.floor(whole_s / 60))}:${two(whole_s % 60)}`;
}

/** Time to go, said as such and not as a time of day, until a run may be opened; undefined where nothing is in the press, or it is over. */
export function timeToOpen(voice: Voice, { timers }: RunView): string | undefined {
  const timer = timers.find(({ code, left_s }) => code === 'open' && left_s > 0);
  return timer && voice.say('runs.to-go', { time: timerText(timer.left_s) });
}
