import type { Press } from '@loopwright/plant';
import { isAhead } from '../../form/day-ahead.ts';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

const day_ms = 86_400_000;

/** The day until which a press's check holds; undefined when nobody noted a check. */
export function checkDueOn({ checkedOn, checkInterval_days }: Press): string | undefined {
  if (checkedOn === undefined) return undefined;
  const due = new Date(Date.parse(checkedOn) + checkInterval_days * day_ms);
  return due.toISOString().slice(0, 10);
}

/** Whether the press may be relied on: until when its check holds, or that it is overdue, was never noted, or lies ahead. */
export function CheckDue({ press, now }: { readonly press: Press; readonly now: string }) {
  const { say, day } = useSpeech();
  const due = checkDueOn(press);
  const { checkedOn } = press;
  if (checkedOn !== undefined && isAhead(checkedOn, now))
    return <Care text={say('stores.check.ahead', { day: day(checkedOn) })} />;
  if (due !== undefined && due >= now.slice(0, 10)) return <p>{say('stores.check.until', { day: day(due) })}</p>;
  return (
    <Care text={due === undefined ? say('stores.check.unknown') : say('stores.check.overdue', { day: day(due) })} />
  );
}

function Care({ text }: { readonly text: string }) {
  return (
    <div className="caution caution-care">
      <Mark name="care" />
      <p>{text}</p>
    </div>
  );
}
