import { Refusal } from '@loopwright/engine/refusal';
import { type ArchiveContent, type ArchiveVerdict, readArchive, verifyArchive } from '@loopwright/records/archive';
import type { Voice } from '@loopwright/words';
import type { Command } from 'commander';
import { nodeVerifier } from '../node-verifier.ts';
import { languageOption } from '../options.ts';
import type { End } from '../program.ts';
import { readRecord } from '../read-record.ts';
import { printVerdict, printVerdictJson } from './say-verdict.ts';

interface VerifyCall {
  readonly json?: boolean;
  readonly witnesses?: string;
}

/** `loopwright verify FILE`: whether an export is whole. Exit 0 only if it is. */
export function addVerify(root: Command, speech: Voice, end: End): void {
  root
    .command('verify')
    .description(speech.say('terminal.verify'))
    .argument('<file>', speech.say('terminal.verify-file'))
    .option('--witnesses <file>', speech.say('terminal.witnesses'))
    .option('--json', speech.say('terminal.json'))
    .addOption(languageOption(speech))
    .action(async (file: string, { json = false, witnesses }: VerifyCall) => {
      const verdict = await verdictOn(file, witnesses, speech);
      if (json) printVerdictJson(verdict);
      else printVerdict(verdict, speech);
      end.exitCode = verdict instanceof Refusal || verdict.failure !== undefined ? 1 : 0;
    });
}

async function verdictOn(
  file: string,
  witnesses: string | undefined,
  speech: Voice,
): Promise<ArchiveVerdict | Refusal> {
  try {
    const content = readArchive(await readRecord(file, speech));
    return await verifyArchive(await withWitnesses(content, witnesses, speech), nodeVerifier());
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
    throw cause;
  }
}

/** Countersignatures that the auditor holds count instead of those that came with the record. */
export async function withWitnesses(
  content: ArchiveContent,
  file: string | undefined,
  speech: Voice,
): Promise<ArchiveContent> {
  return file === undefined ? content : { ...content, witnesses: await readRecord(file, speech) };
}
