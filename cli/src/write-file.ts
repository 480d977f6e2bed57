import { open, rename, rm } from 'node:fs/promises';
import type { Voice } from '@loopwright/words';
import { fileTrouble } from './file-trouble.ts';

/** Writes a file whole or not at all: under another name first, on the disk, then in its place. */
export async function writeWhole(file: string, content: Uint8Array, speech: Voice): Promise<void> {
  const unfinished = `${file}.${process.pid}.part`;
  try {
    const handle = await open(unfinished, 'w');
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(unfinished, file);
  } catch (cause) {
    await rm(unfinished, { force: true });
    throw fileTrouble(cause, { speech, value: file, missing: 'terminal.no-target-folder', exitCode: 1 });
  }
}
