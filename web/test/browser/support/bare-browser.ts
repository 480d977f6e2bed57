import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { browserFlags, executablePath } from '../../../../tools/browser/launch.ts';

/** A browser without anybody at its controls: it opens one address and can be killed. */
export interface BareBrowser {
  /** Ends every process of the browser at once, as a flat battery or the system does; nothing is flushed or closed. */
  kill(): Promise<void>;
}

/**
 * Starts a browser on a profile.
 *
 * @param profile - folder in which it keeps everything
 * @param address - that it opens
 */
export async function startBareBrowser(profile: string, address: string): Promise<BareBrowser> {
  const flags = [...browserFlags, '--headless', `--user-data-dir=${profile}`, '--disable-extensions', '--mute-audio'];
  const child = spawn(await executablePath(), [...flags, address], { detached: true, stdio: 'ignore' });
  return { kill: () => kill(child) };
}

async function kill(child: ChildProcess): Promise<void> {
  if (child.pid === undefined || child.exitCode !== null) return;
  const ended = once(child, 'exit');
  process.kill(-child.pid, 'SIGKILL');
  await ended;
}
