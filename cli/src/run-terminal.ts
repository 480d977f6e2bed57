import { Refusal } from '@loopwright/engine/refusal';
import { isLanguage, type Language, sentence, type Voice, voice } from '@loopwright/words';
import { CommanderError } from 'commander';
import { callTrouble } from './call-trouble.ts';
import { program } from './program.ts';
import { Stop } from './stop.ts';

/**
 * Runs one command and tells how it ended: 0 done, 1 cannot be answered, 2 the call makes no sense. Whatever goes
 * wrong, a person reads one sentence.
 */
export async function runTerminal(words: readonly string[]): Promise<number> {
  const speech = voice(languageAskedFor(words), 'metric');
  process.stdout.on('error', stopAtClosedPipe);
  try {
    const end = { exitCode: 0 };
    const commands = program(speech, end);
    if (words.length === 0) return helpInstead(commands.helpInformation());
    await commands.parseAsync(words, { from: 'user' });
    return end.exitCode;
  } catch (cause) {
    return endOf(cause, speech, words);
  }
}

// The language must be known before the call is understood, so that a misunderstanding is said in it too.
function languageAskedFor(words: readonly string[]): Language {
  const at = words.indexOf('--lang');
  const asked = at >= 0 ? words[at + 1] : words.find((word) => word.startsWith('--lang='))?.slice('--lang='.length);
  return asked !== undefined && isLanguage(asked) ? asked : 'en';
}

function endOf(cause: unknown, speech: Voice, words: readonly string[]): number {
  if (cause instanceof Stop) {
    console.error(cause.message);
    return cause.exitCode;
  }
  if (cause instanceof CommanderError) {
    if (cause.exitCode === 0) return 0;
    console.error(callTrouble(cause, speech, words));
    return 2;
  }
  if (cause instanceof Refusal) {
    console.error(sentence(speech, cause));
    return 1;
  }
  const reason = cause instanceof Error ? cause.message : String(cause);
  console.error(speech.say('terminal.unexpected', { reason: reason.split('\n')[0] ?? '' }));
  return 1;
}

function helpInstead(help: string): number {
  console.error(help.trimEnd());
  return 2;
}

// `loopwright lines | head` closes the pipe early; that is no fault.
function stopAtClosedPipe(problem: NodeJS.ErrnoException): void {
  if (problem.code === 'EPIPE') process.exit(0);
  throw problem;
}
