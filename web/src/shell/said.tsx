import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useSpeech } from '../speech/use-speech.tsx';

interface SaidProps {
  readonly title: string;
  readonly next: string;
  /** Offers the way back to the list. */
  readonly toLines?: boolean;
  /** Offers to do again what failed. */
  readonly onAgain?: () => void;
  readonly children?: ReactNode;
}

/** A plain sentence in place of what cannot be shown, and the next step. */
export function Said({ title, next, toLines = false, onAgain, children }: SaidProps) {
  const { say } = useSpeech();
  return (
    <div className="said" role="alert">
      <h1 tabIndex={-1}>{title}</h1>
      <p>{next}</p>
      {children}
      {onAgain === undefined ? null : (
        <button type="button" className="button main-action" onClick={onAgain}>
          {say('app.again')}
        </button>
      )}
      {toLines ? (
        <Link href="/" className="button main-action">
          {say('app.lines')}
        </Link>
      ) : null}
    </div>
  );
}
