import { languages, unitSystems, type Voice } from '@loopwright/words';
import { type Command, Option } from 'commander';
import { Stop } from './stop.ts';

/** An option that takes one of a few words; another word ends the call with those that are allowed. */
export function choice(
  flags: string,
  description: string,
  { allowed, speech }: { readonly allowed: readonly string[]; readonly speech: Voice },
): Option {
  const option = new Option(flags, description);
  return option.argParser((value: string) => {
    if (allowed.includes(value)) return value;
    const said = { option: option.long ?? flags, value, allowed: allowed.join(', ') };
    throw new Stop(speech.say('terminal.not-a-choice', said), 2);
  });
}

/** Options of every command that reads a plant and speaks to a person. */
export function addReaderOptions(command: Command, speech: Voice): Command {
  return command
    .option('--plant <folder>', speech.say('terminal.plant-folder'))
    .addOption(languageOption(speech))
    .addOption(unitsOption(speech));
}

export function unitsOption(speech: Voice): Option {
  return choice('--units <system>', speech.say('terminal.units'), { allowed: unitSystems, speech }).default('metric');
}

export function languageOption(speech: Voice): Option {
  return choice('--lang <language>', speech.say('terminal.lang'), { allowed: languages, speech }).default('en');
}
