import { readdir, readFile } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';

/**
 * Ends every process of the browser that runs on a profile at once, as a flat battery does; nothing is flushed or closed.
 *
 * @param profile - folder in which it keeps everything
 * @returns number of processes that were ended
 */
export async function killProfile(profile: string): Promise<number> {
  const found = await processesOf(profile);
  for (const id of found) process.kill(id, 'SIGKILL');
  // The next browser on the profile must find nobody there.
  while ((await processesOf(profile)).length > 0) await pause(20);
  return found.length;
}

async function processesOf(profile: string): Promise<readonly number[]> {
  const ids = (await readdir('/proc')).filter((name) => /^\d+$/.test(name));
  const told = await Promise.all(ids.map((id) => readFile(`/proc/${id}/cmdline`, 'utf8').catch(() => '')));
  return ids.filter((_, at) => told[at]?.includes(`--user-data-dir=${profile}`)).map(Number);
}
