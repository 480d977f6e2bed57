import { type KeyboardEvent, type MouseEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { readySound } from './alarm-sound.ts';

/** How long a finger rests on what stops a run or departs from the card [ms]. */
const hold_ms = 1000;

interface HoldButtonProps {
  readonly children: ReactNode;
  readonly note: string;
  readonly onHeld: () => void;
  readonly disabled?: boolean;
}

/** A tile that must be held for a second. Let go sooner, nothing happens. */
export function HoldButton({ children, note, onHeld, disabled = false }: HoldButtonProps) {
  const [held, setHeld] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const letGo = () => {
    clearTimeout(timer.current);
    setHeld(false);
  };
  const begin = () => {
    letGo();
    void readySound();
    setHeld(true);
    timer.current = setTimeout(() => {
      setHeld(false);
      onHeld();
    }, hold_ms);
  };
  useEffect(() => () => clearTimeout(timer.current), []);
  const isKey = ({ key }: KeyboardEvent) => key === 'Enter' || key === ' ';
  return (
    <button
      type="button"
      className="button run-tile run-hold"
      data-held={held}
      disabled={disabled}
      onPointerDown={begin}
      onPointerUp={letGo}
      onPointerLeave={letGo}
      onPointerCancel={letGo}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => isKey(event) && !event.repeat && begin()}
      onKeyUp={letGo}
      onBlur={letGo}
      onClick={(event) => isSpokenClick(event) && onHeld()}
    >
      <span>{children}</span>
      <span className="run-hold-note">{note}</span>
    </button>
  );
}

/** A screen reader presses without a finger or a key: it cannot hold, and has read the words aloud. */
function isSpokenClick({ nativeEvent, detail }: MouseEvent): boolean {
  return detail === 0 && 'pointerType' in nativeEvent && nativeEvent.pointerType === '';
}
