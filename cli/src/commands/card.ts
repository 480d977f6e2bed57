import { spliceCard } from '@loopwright/jobs';
import { cardPage, pageText } from '@loopwright/sheets';
import { type UnitSystem, type Voice, voice } from '@loopwright/words';
import type { Command } from 'commander';
import { checkNames, momentOf, textWidth } from '../asked-of-plant.ts';
import { addReaderOptions, choice } from '../options.ts';
import { readPlant } from '../read-plant.ts';
import { writeWhole } from '../write-file.ts';

const papers = ['a5', 'half-letter'] as const;

interface CardCall {
  readonly plant?: string;
  readonly units: UnitSystem;
  readonly press?: string;
  readonly alone?: true;
  readonly people?: '1' | '2';
  readonly pdf?: string;
  readonly paper: (typeof papers)[number];
  readonly now?: string;
  readonly worked?: true;
}

/** `loopwright card POSITION`: the splice card, to read here or as PDF. */
export function addCard(root: Command, speech: Voice): void {
  const card = root
    .command('card')
    .description(speech.say('terminal.card'))
    .argument('<position>', speech.say('terminal.position'));
  addReaderOptions(card, speech)
    .option('--press <press>', speech.say('terminal.press'))
    .option('--alone', speech.say('terminal.alone'))
    .addOption(choice('--people <number>', speech.say('terminal.people'), { allowed: ['1', '2'], speech }))
    .option('--pdf <file>', speech.say('terminal.pdf'))
    .addOption(choice('--paper <paper>', speech.say('terminal.paper'), { allowed: papers, speech }).default('a5'))
    .option('--now <moment>', speech.say('terminal.now'))
    .option('--worked', speech.say('terminal.worked'))
    .action((position: string, call: CardCall) => showCard(position, call, speech));
}

async function showCard(positionId: string, call: CardCall, speech: Voice): Promise<void> {
  const now = momentOf(call.now, speech);
  const plant = await readPlant(call.plant, speech);
  checkNames(plant, positionId, call.press, speech);
  const card = spliceCard(plant, positionId, {
    now,
    people: call.alone !== true && call.people === '2' ? 2 : 1,
    ...(call.press === undefined ? {} : { press: call.press }),
  });
  const page = cardPage(card, voice(speech.language, call.units));
  if (call.pdf === undefined) return console.log(pageText(page, textWidth(), { worked: call.worked === true }));
  // The PDF maker is large, and most cards are read here.
  const { makePdf } = await import('../make-pdf.ts');
  await writeWhole(call.pdf, await makePdf(page, call.paper), speech);
  console.log(speech.say('terminal.wrote', { file: call.pdf }));
}
