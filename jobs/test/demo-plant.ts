import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Plant, readPlantFolder } from '@loopwright/plant';
import { definitions, fold } from '@loopwright/records';

/** The invented plant as the app reads it: folder → definitions → fold. */
export function demoPlant(): Plant {
  const folder = join(import.meta.dirname, '../../demo');
  const files = new Map(
    readdirSync(folder)
      .filter((name) => name.endsWith('.csv'))
      .map((name) => [name, new Uint8Array(readFileSync(join(folder, name)))]),
  );
  return fold(definitions(readPlantFolder(files).definitions));
}
