import { readPlantFolderFrom } from '@loopwright/plant';
import { definitions } from '@loopwright/records';
import type { FastifyInstance } from 'fastify';
import { diskFolder } from './disk-folder.ts';
import { problemText } from './say.ts';

/** Reads the plant's folder at each request, so that a person who edits a file sees it at the next look. */
export function plantRoute(app: FastifyInstance, plantFolder: string, demo: boolean): void {
  app.get('/plant/events.json', async (_request, reply) => {
    reply.header('cache-control', 'no-store');
    const reading = await readPlantFolderFrom(diskFolder(plantFolder));
    const problems = reading.problems.map((problem) => ({ ...problem, message: problemText(problem) }));
    if (reading.plant === undefined) return reply.code(422).send({ problems });
    return { events: definitions(reading.definitions), problems, demo };
  });
}
