import type { Press } from '@loopwright/plant';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

const day_ms = 86_400_000;

/** The day until which a press's check holds; undefined when nobody noted a check. */
export function checkDueOn({ checkedOn, checkInterval_days }: Press): string | undefined {
  if (checkedOn === undefined) return undefined;
  const due = new Date(Date.parse(checkedOn) + checkInterval_days * day_ms);
  return due.toISOString().slice(0, 10);
}

/** Whether the press may be relied on: until when its check holds, or that it is overdue or was never noted. */
export function CheckDue({ press, now }: { readonly press: Press; readonly now: string }) {
  const { say, day } = useSpeech();
  const due = checkDueOn(press);
  if (due !== undefined && due >= now.slice(0, 10)) return <p>{say('stores.check.until', { day: day(due) })}</p>;
  return (
    <div className="caution caution-care">
      <Mark name="care" />
      <p>{due === undefined ? say('stores.check.unknown') : say('stores.check.overdue', { day: day(due) })}</p>
    </div>
  );
}
