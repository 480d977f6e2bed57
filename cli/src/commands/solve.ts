import { Refusal } from '@loopwright/engine/refusal';
import {
  type Answer,
  formulasOf,
  type Problem,
  readJson,
  refusedAnswer,
  type SolveOptions,
  solve,
  type Topic,
  topicOf,
  topicSchema,
  topics,
} from '@loopwright/jobs/solve';
import { nearest } from '@loopwright/plant';
import { sentence, type Voice, voice } from '@loopwright/words';
import type { Command } from 'commander';
import { inputText } from '../input-text.ts';
import { mapOnAllCores } from '../map-on-all-cores.ts';
import { nodeVerifier } from '../node-verifier.ts';
import type { End } from '../program.ts';
import { progressOnStderr } from '../progress.ts';
import { Stop } from '../stop.ts';

interface SolveCall {
  readonly schema?: true;
  readonly list?: true;
  readonly explain?: true;
}

/** `loopwright solve TOPIC [FILE]`: JSON in, JSON out, for scripts. */
export function addSolve(root: Command, speech: Voice, end: End): void {
  root
    .command('solve')
    .description(speech.say('terminal.solve'))
    .argument('[topic]', speech.say('terminal.topic'))
    .argument('[file]', speech.say('terminal.file'))
    .option('--schema', speech.say('terminal.schema'))
    .option('--list', speech.say('terminal.list'))
    .option('--explain', speech.say('terminal.explain'))
    .action(async (named: string | undefined, file: string | undefined, call: SolveCall) => {
      if (call.list) return printTopics();
      const topic = topicNamed(named, speech);
      if (call.schema) return print(topicSchema(topic));
      const text = call.explain && file === undefined && process.stdin.isTTY ? '' : await inputText(file, speech);
      // Asked to explain without an input, the formulas themselves are the answer.
      if (call.explain && text === '') return print({ topic: topic.id, formulas: formulasOf(topic) });
      const answer = await answerTo(topic, text, {
        say,
        verify,
        explain: call.explain === true,
        progress: progressOnStderr(),
        mapCycles: mapOnAllCores,
      });
      print(answer);
      end.exitCode = answer.status === 'ok' ? 0 : 1;
    });
}

function topicNamed(named: string | undefined, speech: Voice): Topic {
  if (named === undefined) throw new Stop(topicMissing(speech), 2);
  const topic = topicOf(named);
  if (topic !== undefined) return topic;
  const known = topics.map(({ id }) => id);
  const near = nearest(named, known);
  const guess = near === undefined ? '' : ` ${speech.say('terminal.near-names', { names: near })}`;
  throw new Stop(`${speech.say('terminal.unknown-topic', { value: named, known: known.join(', ') })}${guess}`, 2);
}

function topicMissing(speech: Voice): string {
  const missing = speech.say('terminal.missing-argument', { value: 'topic' });
  return `${missing} ${speech.say('terminal.see-help', { command: 'loopwright solve' })}`;
}

async function answerTo(topic: Topic, text: string | Refusal, options: SolveOptions): Promise<Answer> {
  try {
    if (text instanceof Refusal) throw text;
    return await solve(topic, readJson(text), options);
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    return refusedAnswer(cause, options.say);
  }
}

// Answers are read by scripts, so their sentences do not change with the reader.
const english = voice('en', 'metric');
const say = (problem: Problem) => sentence(english, problem);
const verify = nodeVerifier();

function printTopics(): void {
  print({ topics: topics.map(({ id, about }) => ({ id, about })) });
}

function print(value: unknown): void {
  console.log(JSON.stringify(value, null, 2));
}
