import type { WorkedText } from '@loopwright/sheets';
import { type ReactNode, useId, useState } from 'react';
import { useSpeech } from '../speech/use-speech.tsx';
import { Mark } from './mark.tsx';
import { WorkedView } from './worked-view.tsx';

/** One switch and what it opens; whoever uses it decides where each of the two stands. */
export interface HowComputed {
  readonly button: (children?: ReactNode) => ReactNode;
  readonly opened: ReactNode;
}

/** The switch "How it was computed" of one number, and its formula while it is open. */
export function useHowComputed(worked: WorkedText | undefined): HowComputed | undefined {
  const [open, setOpen] = useState(false);
  const id = useId();
  if (worked === undefined) return undefined;
  return {
    button: (children) => (
      <HowButton open={open} controls={id} onPress={() => setOpen(!open)}>
        {children}
      </HowButton>
    ),
    opened: open ? <WorkedView worked={worked} id={id} /> : null,
  };
}

interface HowButtonProps {
  readonly open: boolean;
  readonly controls: string;
  readonly onPress: () => void;
  readonly children: ReactNode;
}

// Around a number the number itself is the switch; the words are then for those who hear the page.
function HowButton({ open, controls, onPress, children }: HowButtonProps) {
  const { say } = useSpeech();
  const words = say('app.worked.how');
  const alone = children === undefined;
  return (
    <button
      type="button"
      className={alone ? 'how how-alone' : 'how'}
      aria-expanded={open}
      aria-controls={open ? controls : undefined}
      onClick={onPress}
    >
      {alone ? (
        <span className="how-words">{words}</span>
      ) : (
        <>
          {children}
          <span className="sr">, {words}</span>
        </>
      )}
      <Mark name="down" />
    </button>
  );
}
