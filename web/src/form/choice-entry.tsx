import { ChoiceGroup } from '../settings/choice-group.tsx';
import { useSpeech } from '../speech/use-speech.tsx';
import { BadgeShape } from './badge-shape.tsx';
import { choiceWord } from './field-words.ts';
import { type ControlProps, withoutKept } from './number-entry.tsx';

/** One of a few answers, or yes or no; where nothing need be said, that is an answer too. */
export function ChoiceEntry({ field, label, entry, text, onChange }: ControlProps) {
  const speech = useSpeech();
  const answers = field.asked === 'yes-no' ? ['no', 'yes'] : (field.allowed ?? []);
  const open = !field.required && field.byDefault === undefined ? [''] : [];
  const word = (value: string) => {
    if (value === '') return speech.say('stores.unsaid');
    return field.asked === 'yes-no'
      ? speech.say(value === 'yes' ? 'stores.yes' : 'stores.no')
      : choiceWord(speech, field.name, value);
  };
  return (
    <ChoiceGroup
      title={label}
      options={[...open, ...answers].map((value) => ({
        value,
        shown:
          field.name === 'shape' ? (
            <span className="badge-who">
              <BadgeShape shape={value} /> {word(value)}
            </span>
          ) : (
            word(value)
          ),
      }))}
      chosen={text === '' && open.length === 0 ? undefined : text}
      onChoose={(value) => onChange({ ...withoutKept(entry), text: value })}
    />
  );
}
