import { open } from 'node:fs/promises';
import { Refusal } from '@loopwright/engine/refusal';
import { engineVersion } from '@loopwright/engine/version';
import { refusedAnswer } from '@loopwright/jobs/solve';
import { type ArchiveVerdict, checkFileSize, readArchive, verifyArchive } from '@loopwright/records/archive';
import { emptyRoot, logRoot, noEvent } from '@loopwright/records/log';
import { sentence, type Voice, voice } from '@loopwright/words';
import type { Command } from 'commander';
import { fileTrouble } from '../file-trouble.ts';
import { nodeVerifier } from '../node-verifier.ts';
import { languageOption } from '../options.ts';
import type { End } from '../program.ts';

/** `loopwright verify FILE`: whether an export is whole. Exit 0 only if it is. */
export function addVerify(root: Command, speech: Voice, end: End): void {
  root
    .command('verify')
    .description(speech.say('terminal.verify'))
    .argument('<file>', speech.say('terminal.verify-file'))
    .option('--json', speech.say('terminal.json'))
    .addOption(languageOption(speech))
    .action(async (file: string, { json = false }: { readonly json?: boolean }) => {
      const verdict = await verdictOn(file, speech);
      if (json) printJson(verdict);
      else if (verdict instanceof Refusal) console.error(sentence(speech, verdict));
      else print(verdict, speech);
      end.exitCode = verdict instanceof Refusal || verdict.failure !== undefined ? 1 : 0;
    });
}

async function verdictOn(file: string, speech: Voice): Promise<ArchiveVerdict | Refusal> {
  try {
    return await verifyArchive(readArchive(await bytesOf(file, speech)), nodeVerifier());
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
    throw cause;
  }
}

async function bytesOf(file: string, speech: Voice): Promise<Uint8Array> {
  try {
    const handle = await open(file, 'r');
    try {
      checkFileSize((await handle.stat()).size);
      return await handle.readFile();
    } finally {
      await handle.close();
    }
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw fileTrouble(cause, { speech, value: file, missing: 'terminal.no-file', exitCode: 2 });
  }
}

/** Digits of a device's id that are shown; enough to tell the devices of a plant apart. */
const shownDigits = 12;

function print({ failure, logs, warnings }: ArchiveVerdict, speech: Voice): void {
  const { verdict, ...places } = failure ?? { verdict: 'ok' as const };
  console.log(speech.say(`verdict.${verdict}`, places));
  for (const { state, witnessed } of failure === undefined ? logs : []) {
    const { device, size } = state;
    console.log(speech.say('verify.log', { device: device.slice(0, shownDigits), size, open: size - witnessed }));
  }
  for (const { code, at } of warnings) console.log(sentence(speech, { code, path: '', data: { at } }));
}

// Answers are read by scripts, so their sentences do not change with the reader.
const english = voice('en', 'metric');

function printJson(verdict: ArchiveVerdict | Refusal): void {
  const answer =
    verdict instanceof Refusal ? refusedAnswer(verdict, (problem) => sentence(english, problem)) : answerOf(verdict);
  console.log(JSON.stringify(answer, null, 2));
}

/** As the topic `log` answers, about the exporting device; the logs of all devices beside it. */
function answerOf({ failure, device, plant, logs, warnings }: ArchiveVerdict): object {
  const each = logs.map(({ state, witnessed }) => ({
    device: state.device,
    size: state.size,
    head: state.head,
    root: logRoot(state),
    witnessed,
  }));
  const { size = 0, head = noEvent, root = emptyRoot, witnessed = 0 } = each[0] ?? {};
  return {
    status: 'ok',
    witnessed,
    ...(failure ?? { verdict: 'ok' }),
    ...(device === undefined ? {} : { device }),
    ...(plant === undefined ? {} : { plant }),
    ...{ size, head, root, logs: each },
    warnings: warnings.map(({ code, at }) => ({
      code,
      at,
      message: sentence(english, { code, path: '', data: { at } }),
    })),
    engine: engineVersion,
    used: {},
  };
}
