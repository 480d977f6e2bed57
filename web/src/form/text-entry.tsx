import { type ControlProps, withoutKept } from './number-entry.tsx';

/** A text, a short name, or a note of more than one line. */
export function TextEntry({ field, entry, text, id, describedBy, wrong, onChange }: ControlProps) {
  const shared = {
    id,
    className: 'entry',
    value: text,
    'aria-invalid': wrong,
    'aria-describedby': describedBy,
    'aria-required': field.required,
    autoComplete: 'off',
  };
  const type = (typed: string) => onChange({ ...withoutKept(entry), text: typed });
  if (field.name === 'note') {
    return <textarea {...shared} rows={2} dir="auto" onChange={(event) => type(event.target.value)} />;
  }
  const asId = field.asked === 'id' ? { autoCapitalize: 'none', spellCheck: false } : {};
  return <input {...shared} {...asId} type="text" dir="auto" onChange={(event) => type(event.target.value)} />;
}
