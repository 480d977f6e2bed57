import { randomBytes, webcrypto } from 'node:crypto';
import { definitionsOf, type Plant } from '@loopwright/plant';
import { definitions } from '@loopwright/records';
import { writeArchive } from '@loopwright/records/archive';
import { appendEvent, cardCode, emptyLog, signCheckpoint, webCryptoSigner, writeExport } from '@loopwright/records/log';
import type { Voice } from '@loopwright/words';
import type { Command } from 'commander';
import { languageOption } from '../options.ts';
import { readPlant } from '../read-plant.ts';
import { Stop } from '../stop.ts';
import { writeWhole } from '../write-file.ts';

interface ExportCall {
  readonly plant?: string;
  readonly demo?: true;
}

/** `loopwright export FILE`: everything about a plant as one signed file. */
export function addExport(root: Command, speech: Voice): void {
  root
    .command('export')
    .description(speech.say('terminal.export'))
    .argument('<file>', speech.say('terminal.export-file'))
    .option('--plant <folder>', speech.say('terminal.plant-folder'))
    .option('--demo', speech.say('terminal.export-demo'))
    .addOption(languageOption(speech))
    .action((file: string, call: ExportCall) => exportPlant(file, call, speech));
}

async function exportPlant(file: string, { plant: folder, demo }: ExportCall, speech: Voice): Promise<void> {
  const form = /\.(jsonl|zip)$/i.exec(file)?.[1]?.toLowerCase();
  if (form === undefined) throw new Stop(speech.say('terminal.not-an-export-name', { value: file }), 2);
  if (demo && folder !== undefined) throw new Stop(speech.say('terminal.one-plant'), 2);
  const at = new Date().toISOString();
  const { text, code } = await signedExport(await readPlant(folder, speech), at);
  const log = Buffer.from(text);
  await writeWhole(file, form === 'zip' ? writeArchive(log, {}, at) : log, speech);
  console.log(speech.say('terminal.wrote', { file }));
  console.log(speech.say('verify.throwaway', { code }));
}

/** A plant's definitions as a log of their own, signed with a key that nobody keeps. */
async function signedExport(plant: Plant, at: string): Promise<{ text: string; code: string }> {
  const { subtle } = webcrypto;
  const halves = await subtle.generateKey('Ed25519', false, ['sign', 'verify']);
  const key = await webCryptoSigner(subtle, halves as webcrypto.CryptoKeyPair);
  const [boot, by] = [randomBytes(16).toString('hex'), randomBytes(16).toString('hex')];
  const lines: string[] = [];
  let state = emptyLog(plant.id, key.publicKey);
  for (const { type, body } of definitions(definitionsOf(plant))) {
    const up_ms = Math.round(performance.now());
    const appended = await appendEvent(state, { at, boot, up_ms, by, type, body }, key.sign);
    lines.push(appended.line);
    state = appended.state;
  }
  const checkpoint = await signCheckpoint(state, at, key.sign);
  const text = await writeExport(plant.id, [{ publicKey: key.publicKey, lines, checkpoint }], key.sign);
  return { text, code: cardCode(checkpoint) };
}
