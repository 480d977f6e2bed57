import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { type StartState, startSteps } from './start-steps.ts';

/** How far the way is: a bar that says the same as the words beside it, and the way out. */
export function StartStrip({ step }: Pick<StartState, 'step'>) {
  const { say } = useSpeech();
  const count = startSteps.length;
  const at = step === 'ready' ? count : startSteps.indexOf(step);
  const words = step === 'ready' ? say('start.done') : say(`start.step.${step}`);
  return (
    <nav className="start-strip" aria-label={say('start.title')}>
      <p className="strong">{say('start.step', { at: Math.min(at + 1, count), count, step: words })}</p>
      <svg className="start-bar" viewBox={`0 0 ${count * 20} 6`} preserveAspectRatio="none" aria-hidden="true">
        {startSteps.map((name, i) => (
          <rect
            key={name}
            x={i * 20 + 1}
            y="1"
            width="18"
            height="4"
            strokeWidth="0.6"
            className={i < at || step === 'ready' ? 'line-ink fill-ink' : 'line-ink fill-none'}
          />
        ))}
      </svg>
      {step === 'ready' ? null : (
        <Link href="/" className="button">
          {say('start.leave')}
        </Link>
      )}
    </nav>
  );
}
