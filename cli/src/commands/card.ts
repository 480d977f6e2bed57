import { spliceCard } from '@loopwright/jobs';
import { nearest, type Plant } from '@loopwright/plant';
import { cardPage, pageText } from '@loopwright/sheets';
import { type UnitSystem, type Voice, voice } from '@loopwright/words';
import type { Command } from 'commander';
import { addReaderOptions, choice } from '../options.ts';
import { readPlant } from '../read-plant.ts';
import { Stop } from '../stop.ts';
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

/** As wide as the terminal, within what reads well. */
function textWidth(): number {
  return Math.min(100, Math.max(40, process.stdout.columns ?? 80));
}

/** The moment asked for, in UTC; without one, now. */
function momentOf(asked: string | undefined, speech: Voice): string {
  if (asked === undefined) return new Date().toISOString();
  const isMoment = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?Z$/.test(asked) && !Number.isNaN(Date.parse(asked));
  if (!isMoment) throw new Stop(speech.say('terminal.not-a-moment', { value: asked }), 2);
  return new Date(asked).toISOString();
}

function checkNames(plant: Plant, position: string, press: string | undefined, speech: Voice): void {
  if (!Object.hasOwn(plant.positions, position)) throw new Stop(unknownPosition(plant, position, speech), 1);
  if (press === undefined || Object.hasOwn(plant.presses, press)) return;
  const known = Object.keys(plant.presses).join(', ');
  throw new Stop(speech.say('terminal.unknown-press', { value: press, plant: plant.name, known }), 1);
}

function unknownPosition(plant: Plant, value: string, speech: Voice): string {
  const names = nearNames(value, Object.keys(plant.positions));
  const near = names.length === 0 ? [] : [speech.say('terminal.near-names', { names: names.join(', ') })];
  const said = speech.say('terminal.unknown-position', { value, plant: plant.name });
  return [said, ...near, speech.say('terminal.see-lines')].join(' ');
}

const mostNames = 3;

/** Positions that may be meant: those that begin as was typed, else those of the same line, else the most alike. */
function nearNames(value: string, known: readonly string[]): readonly string[] {
  const wanted = value.toLowerCase();
  const beginning = (text: string) => known.filter((id) => text !== '' && id.toLowerCase().startsWith(text));
  const same = known.filter((id) => id.toLowerCase() === wanted);
  const line = /^(.*\d-)\d*$/.exec(wanted)?.[1] ?? '';
  const alike = nearest(value, known);
  const found = [same, beginning(wanted), beginning(line), alike === undefined ? [] : [alike]];
  return (found.find((names) => names.length > 0) ?? []).slice(0, mostNames);
}
