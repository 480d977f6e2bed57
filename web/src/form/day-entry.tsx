import { type ControlProps, withoutKept } from './number-entry.tsx';

/** A day, or a moment by the clock of this device; kept in UTC. */
export function DayEntry({ field, entry, text, id, describedBy, wrong, onChange }: ControlProps) {
  const isMoment = field.asked === 'moment';
  return (
    <input
      id={id}
      type={isMoment ? 'datetime-local' : 'date'}
      className="entry"
      value={isMoment ? localMoment(text) : text}
      aria-invalid={wrong}
      aria-describedby={describedBy}
      aria-required={field.required}
      onChange={({ target: { value } }) =>
        onChange({ ...withoutKept(entry), text: isMoment ? utcMoment(value) : value })
      }
    />
  );
}

/** `2026-11-25T03:04` by the clock of this device, as the browser's field wants it. */
function localMoment(utc: string): string {
  const at = new Date(utc);
  if (Number.isNaN(at.getTime())) return '';
  return new Date(at.getTime() - at.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
}

function utcMoment(local: string): string {
  const at = new Date(local);
  return Number.isNaN(at.getTime()) ? '' : at.toISOString().replace(/\.\d{3}Z$/, 'Z');
}
