import { open } from 'node:fs/promises';
import { Refusal } from '@loopwright/engine/refusal';
import { checkFileSize } from '@loopwright/records/archive';
import type { Voice } from '@loopwright/words';
import { fileTrouble } from './file-trouble.ts';

/** Bytes of a record's file; one that is too large is not read at all. */
export async function readRecord(file: string, speech: Voice): Promise<Uint8Array> {
  try {
    const handle = await open(file, 'r');
    try {
      checkFileSize((await handle.stat()).size);
      return await handle.readFile();
    } finally {
      await handle.close();
    }
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw fileTrouble(cause, { speech, value: file, missing: 'terminal.no-file', exitCode: 2 });
  }
}
