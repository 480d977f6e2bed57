import { nearest } from '@loopwright/plant';
import type { MessageKey, Voice } from '@loopwright/words';
import type { CommanderError } from 'commander';
import { commandNames } from './program.ts';

const sentences: Readonly<Record<string, MessageKey>> = {
  'commander.unknownOption': 'terminal.unknown-option',
  'commander.unknownCommand': 'terminal.unknown-command',
  'commander.missingArgument': 'terminal.missing-argument',
  'commander.optionMissingArgument': 'terminal.missing-argument',
  'commander.missingMandatoryOptionValue': 'terminal.missing-argument',
  'commander.excessArguments': 'terminal.too-many-arguments',
};

/** The sentence for a call that makes no sense, and where to look. */
export function callTrouble({ code, message }: CommanderError, speech: Voice, words: readonly string[]): string {
  const [command] = words;
  const known = command !== undefined && commandNames.includes(command);
  const see = speech.say('terminal.see-help', { command: known ? `loopwright ${command}` : 'loopwright' });
  const key = sentences[code];
  if (key === undefined) return see;
  const value = /'([^']+)'/.exec(message)?.[1] ?? '';
  const near = code === 'commander.unknownCommand' ? nearest(value, commandNames) : undefined;
  const guess = near === undefined ? [] : [speech.say('terminal.near-names', { names: near })];
  return [speech.say(key, { value }), ...guess, see].join(' ');
}
