import { readFile } from 'node:fs/promises';
import { readArchive, verifyArchive } from '@loopwright/records/archive';
import {
  type Countersignature,
  deviceOf,
  type LogMet,
  meetExport,
  type Witnessed,
  witnessLog,
  writeCountersignatures,
} from '@loopwright/records/log';
import type { Voice } from '@loopwright/words';
import type { Command } from 'commander';
import { keptFile } from '../kept-file.ts';
import { keyOfFile } from '../key-file.ts';
import { nodeVerifier } from '../node-verifier.ts';
import { languageOption } from '../options.ts';
import type { End } from '../program.ts';
import { readRecord } from '../read-record.ts';
import { writeWhole } from '../write-file.ts';
import { printVerdict } from './say-verdict.ts';

interface WitnessCall {
  readonly key: string;
  readonly kept: string;
  readonly out?: string;
}

/** `loopwright witness FILE`: countersigns the logs of an export. Exit 0 only if nothing speaks against them. */
export function addWitness(root: Command, speech: Voice, end: End): void {
  root
    .command('witness')
    .description(speech.say('terminal.witness'))
    .argument('<file>', speech.say('terminal.verify-file'))
    .requiredOption('--key <file>', speech.say('terminal.witness-key'))
    .requiredOption('--kept <file>', speech.say('terminal.witness-kept'))
    .option('--out <file>', speech.say('terminal.witness-out'))
    .addOption(languageOption(speech))
    .action(async (file: string, call: WitnessCall) => {
      end.exitCode = (await witness(file, call, speech)) ? 0 : 1;
    });
}

async function witness(file: string, { key: keyFile, kept, out }: WitnessCall, speech: Voice): Promise<boolean> {
  const verify = nodeVerifier();
  const content = readArchive(await readRecord(file, speech));
  const verdict = await verifyArchive(content, verify);
  if (verdict.failure !== undefined) {
    printVerdict(verdict, speech);
    return false;
  }
  const { key, isNew } = await keyOfFile(keyFile, speech);
  if (isNew) console.log(speech.say('witness.new-key', { file: keyFile }));
  const { logs } = await meetExport(content.log, verify);
  const own = deviceOf(key.publicKey);
  const signed: Countersignature[] = [];
  let isWell = true;
  for (const met of logs.filter(({ checkpoint: { size, device } }) => size > 0 && device !== own)) {
    const said = await witnessLog(met, keptFile(kept, speech), { key, at: new Date().toISOString() });
    console.log(sentenceOf(said, met, speech));
    if ('countersignature' in said) signed.push(said.countersignature);
    if ('offered' in said) isWell = false;
  }
  if (signed.length > 0) await addTo(out ?? `${file}.witnesses.jsonl`, signed, speech);
  return isWell;
}

const shownDigits = 12;

function sentenceOf(said: Witnessed, { checkpoint }: LogMet, speech: Voice): string {
  const device = checkpoint.device.slice(0, shownDigits);
  const known = 'known' in said ? { known: said.known.size } : {};
  return speech.say(`witness.${said.meeting}`, { device, size: checkpoint.size, ...known });
}

/** Countersignatures already in the file stay as they are. */
async function addTo(file: string, signed: readonly Countersignature[], speech: Voice): Promise<void> {
  const before = await readFile(file, 'utf8').catch(() => '');
  await writeWhole(file, Buffer.from(before + writeCountersignatures(signed)), speech);
  console.log(speech.say('terminal.wrote', { file }));
}
