import type { Placement } from '@loopwright/jobs/press-run';
import { type ReactNode, useEffect, useRef } from 'react';
import { readySound } from './alarm-sound.ts';

/** A thumb that bounces must not take the next step along. */
const bounce_ms = 350;
/** What clickers and foot switches send. */
const nextKeys: ReadonlySet<string> = new Set(['PageDown', 'ArrowRight', 'ArrowDown', 'Enter', ' ']);

interface BigButtonProps {
  readonly children: ReactNode;
  readonly onTap: () => void;
  readonly disabled?: boolean;
  readonly shape?: Placement['shape'];
  /** One key does the same; never for a tap of its own. */
  readonly keyed?: boolean;
}

/** The one big action. */
export function BigButton({ children, onTap, disabled = false, shape = 'bar', keyed = false }: BigButtonProps) {
  const since = useRef(performance.now());
  const tap = () => {
    void readySound();
    if (!disabled && performance.now() - since.current > bounce_ms) onTap();
  };
  const latest = useRef(tap);
  useEffect(() => {
    latest.current = tap;
  });
  useEffect(() => {
    if (!keyed) return undefined;
    const press = (event: KeyboardEvent) => {
      if (!nextKeys.has(event.key) || event.repeat || isOnControl(event.target)) return;
      event.preventDefault();
      latest.current();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [keyed]);
  return (
    <button type="button" className="button main-action run-main" data-shape={shape} disabled={disabled} onClick={tap}>
      <span>{children}</span>
    </button>
  );
}

/** Keys on something that can be pressed belong to that. */
function isOnControl(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('button, a, input, select, textarea, [role=alertdialog]') !== null;
}
