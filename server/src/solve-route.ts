import { webcrypto } from 'node:crypto';
import { Refusal } from '@loopwright/engine/refusal';
import { type Answer, readJson, refusedAnswer, solve, topicOf, topics } from '@loopwright/jobs/solve';
import { webCryptoVerifier } from '@loopwright/records/log';
import type { FastifyInstance } from 'fastify';
import { say } from './say.ts';

/** Largest body of a request; longer inputs belong in the terminal. */
export const bodyLimit_bytes = 1_048_576;

const httpStatus = { ok: 200, refused: 422, 'not-converged': 422 } as const;

const verify = webCryptoVerifier(webcrypto.subtle);

/** Offers the topics of `loopwright solve` over HTTP, in the same form. */
export function solveRoute(app: FastifyInstance): void {
  app.removeAllContentTypeParsers();
  app.addContentTypeParser('*', { parseAs: 'string' }, (_request, body, done) => done(null, body));
  app.get('/api/solve', async () => ({ topics: topics.map(({ id, about }) => ({ id, about })) }));
  app.post<{ Params: { topic: string } }>('/api/solve/:topic', async (request, reply) => {
    const topic = topicOf(request.params.topic);
    if (topic === undefined)
      return reply
        .code(404)
        .send({ message: `There is no such topic. Topics: ${topics.map(({ id }) => id).join(', ')}.` });
    const { code, answer } = await answerTo(() => solve(topic, readJson(String(request.body ?? '')), { say, verify }));
    return reply.code(code).send(answer);
  });
}

async function answerTo(work: () => Promise<Answer>): Promise<{ code: number; answer: Answer }> {
  try {
    const answer = await work();
    return { code: httpStatus[answer.status], answer };
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    return { code: 400, answer: refusedAnswer(cause, say) };
  }
}
