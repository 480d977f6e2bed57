import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type RunningServer, startServer } from '../../../../server/src/index.ts';
import { demoFolder, webFolder } from './serve-demo.ts';

/** A server with a plant of one's own size. */
export interface ManyPositions extends RunningServer {
  close(): Promise<void>;
}

/**
 * Serves a plant folder whose lines are copies of the first line of the demo plant. The third position of the second line
 * is torn; all others run.
 *
 * @param lines - how many
 * @param perLine - positions on each
 */
export async function serveManyPositions(lines: number, perLine: number): Promise<ManyPositions> {
  const folder = await mkdtemp(join(tmpdir(), 'many-positions-'));
  await cp(demoFolder, folder, { recursive: true });
  const ids = Array.from({ length: lines }, (_, i) => `L${String(i + 1).padStart(3, '0')}`);
  await rewrite(join(folder, 'lines.csv'), (row) => ids.map((id) => row.replaceAll('QM-01', id)));
  await rewrite(join(folder, 'pulleys.csv'), (row) => ids.map((id) => row.replaceAll('QM-01', id)));
  await rewrite(join(folder, 'positions.csv'), (row, at) =>
    at > 0 ? [] : ids.flatMap((id) => rows(id, perLine, row)),
  );
  const server = await startServer({ plantFolder: folder, demo: false, port: 0, webFolder });
  return {
    ...server,
    close: async () => {
      await server.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** Keeps what comes before the first row of the first line, and puts the made rows in place of all rows. */
async function rewrite(file: string, made: (row: string, at: number) => readonly string[]): Promise<void> {
  const all = (await readFile(file, 'utf8')).trimEnd().split(/\r?\n/);
  const isRow = (row: string) => /^(\w+,)?QM-\d/.test(row);
  const models = all.filter((row) => /^(\w+,)?QM-01\b/.test(row));
  await writeFile(file, [...all.filter((row) => !isRow(row)), ...models.flatMap(made), ''].join('\n'));
}

function rows(line: string, count: number, model: string): readonly string[] {
  return Array.from({ length: count }, (_, i) => {
    const row = model
      .replaceAll('QM-01-1', `${line}-${i + 1}`)
      .replace(/QM-01,1,[^,]*/, `${line},${i + 1},Section ${i + 1}`);
    return line === 'L002' && i === 2 ? row.replace('running', 'torn') : row;
  });
}
