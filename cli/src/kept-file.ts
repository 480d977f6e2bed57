import { open, readFile, rm } from 'node:fs/promises';
import { type Checkpoint, canonicalText, canonicalValue, isHash, type KeptCheckpoints } from '@loopwright/records/log';
import type { Voice } from '@loopwright/words';
import { fileTrouble } from './file-trouble.ts';
import { Stop } from './stop.ts';
import { writeWhole } from './write-file.ts';

/**
 * The latest checkpoint of each log, in a file of one canonical line: `{checkpoints, v}`. Comparing and storing is one
 * step: while it lasts a second file, made only where it is not, keeps every other witness with this file waiting.
 */
export function keptFile(file: string, speech: Voice): KeptCheckpoints {
  return {
    exchange: async (log, step) => {
      const lock = `${file}.lock`;
      await take(lock, speech);
      try {
        const kept = await readKept(file, speech);
        const isOf = ({ plant, device }: Checkpoint) => plant === log.plant && device === log.device;
        const { keep, answer } = step(kept.find(isOf));
        if (keep !== undefined) await writeKept(file, [...kept.filter((each) => !isOf(each)), keep], speech);
        return answer;
      } finally {
        await rm(lock, { force: true });
      }
    },
  };
}

async function take(lock: string, speech: Voice): Promise<void> {
  try {
    await (await open(lock, 'wx')).close();
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'EEXIST')
      throw new Stop(speech.say('witness.locked', { file: lock }), 1);
    throw fileTrouble(cause, { speech, value: lock, missing: 'terminal.no-target-folder', exitCode: 1 });
  }
}

/** A damaged file is never taken for an empty one: what was kept would be forgotten, and a log could roll back. */
async function readKept(file: string, speech: Voice): Promise<readonly Checkpoint[]> {
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw fileTrouble(cause, { speech, value: file, missing: 'terminal.no-file', exitCode: 2 });
  }
  const value = canonicalValue(text.replace(/\n$/, '')) as { readonly checkpoints?: unknown } | undefined;
  if (!Array.isArray(value?.checkpoints) || !value.checkpoints.every(isKept))
    throw new Stop(speech.say('witness.kept-damaged', { file }), 1);
  return value.checkpoints;
}

/** As this program wrote it; its signature was checked before. */
function isKept(value: unknown): value is Checkpoint {
  if (typeof value !== 'object' || value === null) return false;
  const { device, root, size } = value as Partial<Checkpoint>;
  return isHash(device) && isHash(root) && Number.isSafeInteger(size);
}

function writeKept(file: string, checkpoints: readonly Checkpoint[], speech: Voice): Promise<void> {
  return writeWhole(file, Buffer.from(`${canonicalText({ v: 1, checkpoints })}\n`), speech);
}
