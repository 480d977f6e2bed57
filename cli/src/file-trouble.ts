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

interface FileUse {
  readonly speech: Voice;
  /** The file or folder as the person named it. */
  readonly value: string;
  /** The sentence when it is not there. */
  readonly missing: MessageKey;
  /** 2 for something to be read, which the call named wrongly; 1 for something that could not be written. */
  readonly exitCode: 1 | 2;
}

/** Turns what the system says of a file into a sentence. */
export function fileTrouble(cause: unknown, { speech, value, missing, exitCode }: FileUse): unknown {
  const code = (cause as { code?: unknown } | null)?.code;
  const key = code === 'ENOENT' ? missing : sentences[String(code)];
  return key === undefined ? cause : new Stop(speech.say(key, { value }), exitCode);
}
