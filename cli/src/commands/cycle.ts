import { type PressCycleReport, pressCycleReport } from '@loopwright/jobs';
import { curveCsv, cyclePage, pageText } from '@loopwright/sheets';
import { sentence, type UnitSystem, type Voice, voice } from '@loopwright/words';
import type { Command } from 'commander';
import { checkNames, momentOf, textWidth } from '../asked-of-plant.ts';

import { addReaderOptions, choice } from '../options.ts';
import { todayAsked } from '../outlet-asked.ts';
import { readPlant } from '../read-plant.ts';
import { Stop } from '../stop.ts';
import { writeWhole } from '../write-file.ts';

const papers = ['a4', 'a5', 'letter'] as const;

interface CycleCall {
  readonly plant?: string;
  readonly units: UnitSystem;
  readonly press?: string;
  readonly outlet?: string;
  readonly air?: string;
  readonly pdf?: string;
  readonly paper: (typeof papers)[number];
  readonly csv?: string;
  readonly now?: string;
  readonly worked?: true;
}

/** `loopwright cycle POSITION`: what happens in the press, to read here, as PDF, or its curve as CSV. */
export function addCycle(root: Command, speech: Voice): void {
  const cycle = root
    .command('cycle')
    .description(speech.say('terminal.cycle'))
    .argument('<position>', speech.say('terminal.position'));
  addReaderOptions(cycle, speech)
    .option('--press <press>', speech.say('terminal.press'))
    .option('--outlet <numbers>', speech.say('terminal.outlet'))
    .option('--air <degrees>', speech.say('terminal.air'))
    .option('--pdf <file>', speech.say('terminal.cycle-pdf'))
    .addOption(choice('--paper <paper>', speech.say('terminal.cycle-paper'), { allowed: papers, speech }).default('a4'))
    .option('--csv <file>', speech.say('terminal.cycle-csv'))
    .option('--now <moment>', speech.say('terminal.now'))
    .option('--worked', speech.say('terminal.worked'))
    .action((position: string, call: CycleCall) => showCycle(position, call, speech));
}

async function showCycle(position: string, call: CycleCall, speech: Voice): Promise<void> {
  const now = momentOf(call.now, speech);
  const today = todayAsked(call, speech);
  const plant = await readPlant(call.plant, speech);
  checkNames(plant, position, call.press, speech);
  const press = call.press === undefined ? {} : { press: call.press };
  const report = pressCycleReport(plant, position, { now, today, ...press });
  const reader = voice(speech.language, call.units);
  const page = cyclePage(report, reader);
  if (call.csv !== undefined) await write(call.csv, curveOf(report, reader, speech), speech);
  if (call.pdf !== undefined) {
    // The PDF maker is large, and most cycles are read here.
    const { makeFlowPdf } = await import('../make-pdf.ts');
    await write(call.pdf, await makeFlowPdf(page, call.paper), speech);
  }
  if (call.csv === undefined && call.pdf === undefined)
    console.log(pageText(page, textWidth(), { worked: call.worked === true }));
}

async function write(file: string, bytes: Uint8Array, speech: Voice): Promise<void> {
  await writeWhole(file, bytes, speech);
  console.log(speech.say('terminal.wrote', { file }));
}

/** The curve, or the end of the call with the reason why there is none. */
function curveOf({ cycle, press }: PressCycleReport, reader: Voice, speech: Voice): Uint8Array {
  if (cycle?.status === 'ok') return new TextEncoder().encode(curveCsv(cycle.curve));
  const missing = speech.say(press === undefined ? 'missing.press' : 'missing.recipe');
  const reason = cycle === undefined ? missing : sentence(reader, cycle);
  throw new Stop(speech.say('terminal.no-cycle', { reason }), 1);
}
