import type { MessageKey, Voice } from '@loopwright/words';
import { Stop } from './stop.ts';

const sentences: Readonly<Record<string, MessageKey>> = {
  EACCES: 'terminal.no-permission',
  EPERM: 'terminal.no-permission',
  EROFS: 'terminal.no-permission',
  EISDIR: 'terminal.is-folder',
  ENOTDIR: 'terminal.not-a-folder',
  ENOSPC: 'terminal.disk-full',
};

/** Turns what the system says of a file into a sentence; `missing` is the sentence when it is not there. */
export function fileTrouble(speech: Voice, cause: unknown, value: string, missing: MessageKey): unknown {
  const code = (cause as { code?: unknown } | null)?.code;
  const key = code === 'ENOENT' ? missing : sentences[String(code)];
  return key === undefined ? cause : new Stop(speech.say(key, { value }), 1);
}
