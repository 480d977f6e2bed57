import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Plant, type PlantFolderReading, readPlantFolderFrom } from '@loopwright/plant';
import { problemSentence, type Voice } from '@loopwright/words';
import { diskFolder } from './disk-folder.ts';
import { fileTrouble } from './file-trouble.ts';
import { Stop } from './stop.ts';

/** The invented plant that comes with the program. */
const demoFolder = fileURLToPath(new URL('../../demo', import.meta.url));

export interface ReadPlant {
  readonly folder: string;
  readonly reading: PlantFolderReading;
}

/** Reads a plant folder; whether it may be used is left to the caller. */
export async function readFolder(named: string | undefined, speech: Voice): Promise<ReadPlant> {
  const folder = named === undefined ? demoFolder : resolve(named);
  try {
    return { folder: named ?? folder, reading: await readPlantFolderFrom(diskFolder(folder)) };
  } catch (cause) {
    throw fileTrouble(cause, { speech, value: named ?? folder, missing: 'terminal.no-folder', exitCode: 2 });
  }
}

/** The plant of a folder; with an error in it, everything wrong is said and nothing is used. */
export async function readPlant(named: string | undefined, speech: Voice): Promise<Plant> {
  const { folder, reading } = await readFolder(named, speech);
  if (reading.plant !== undefined) return reading.plant;
  const errors = reading.problems.filter(({ level }) => level === 'error');
  for (const problem of errors) console.error(problemSentence(speech, problem));
  throw new Stop(speech.say('terminal.plant-wrong', { count: errors.length, folder }), 1);
}
