import { open } from 'node:fs/promises';
import { Refusal } from '@loopwright/engine/refusal';
import { checkSize, largestInput_bytes } from '@loopwright/jobs/solve';
import type { Voice } from '@loopwright/words';
import { fileTrouble } from './file-trouble.ts';

/** The text of a file, or of standard input. Too large an input is refused before it is read. */
export async function inputText(file: string | undefined, speech: Voice): Promise<string | Refusal> {
  try {
    return file === undefined || file === '-' ? await textOfStdin(speech) : await textOfFile(file, speech);
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
    throw cause;
  }
}

async function textOfFile(file: string, speech: Voice): Promise<string> {
  try {
    const handle = await open(file, 'r');
    try {
      checkSize((await handle.stat()).size);
      return await handle.readFile('utf8');
    } finally {
      await handle.close();
    }
  } catch (cause) {
    throw fileTrouble(cause, { speech, value: file, missing: 'terminal.no-file', exitCode: 2 });
  }
}

async function textOfStdin(speech: Voice): Promise<string> {
  if (process.stdin.isTTY) console.error(speech.say('terminal.reading-keyboard'));
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of process.stdin) {
    size += chunk.length;
    if (size > largestInput_bytes) process.stdin.destroy();
    checkSize(size);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString('utf8');
}
