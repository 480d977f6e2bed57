import { type PositionLabel, positionLabels } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { type LabelPaper, labelPapers, labelsOnSheet } from '@loopwright/sheets';
import { type UnitSystem, type Voice, voice } from '@loopwright/words';
import { type Command, Option } from 'commander';
import { addReaderOptions, choice } from '../options.ts';
import { readPlant } from '../read-plant.ts';
import { Stop } from '../stop.ts';
import { writeWhole } from '../write-file.ts';

const papers = labelPapers.map((paper) => paper.toLowerCase());

interface LabelsCall {
  readonly plant?: string;
  readonly demo?: true;
  readonly units: UnitSystem;
  readonly line?: readonly string[];
  readonly position?: readonly string[];
  readonly paper: string;
}

/** `loopwright labels FILE`: labels of positions, to print and hang up. */
export function addLabels(root: Command, speech: Voice): void {
  const labels = root
    .command('labels')
    .description(speech.say('labels.terminal'))
    .argument('<file>', speech.say('labels.terminal-file'));
  addReaderOptions(labels, speech)
    .option('--demo', speech.say('terminal.export-demo'))
    .addOption(several('--line <line>', speech.say('labels.terminal-line')))
    .addOption(several('--position <position>', speech.say('labels.terminal-position')))
    .addOption(
      choice('--paper <paper>', speech.say('labels.terminal-paper'), { allowed: papers, speech }).default('a4'),
    )
    .action((file: string, call: LabelsCall) => writeLabels(file, call, speech));
}

/** An option that may be given again and again; each time adds a value. */
function several(flags: string, description: string): Option {
  return new Option(flags, description).argParser((value: string, before: readonly string[] = []) => [
    ...before,
    value,
  ]);
}

async function writeLabels(file: string, call: LabelsCall, speech: Voice): Promise<void> {
  if (call.demo && call.plant !== undefined) throw new Stop(speech.say('terminal.one-plant'), 2);
  const plant = await readPlant(call.plant, speech);
  const labels = labelsAsked(plant, call, speech);
  const paper = labelPapers.find((known) => known.toLowerCase() === call.paper) ?? 'A4';
  const said = voice(speech.language, call.units);
  await writeWhole(file, await pdfOf(labels, paper, said), speech);
  const sheets = Math.ceil(labels.length / labelsOnSheet);
  console.log(speech.say('labels.wrote', { file, labels: labels.length, sheets }));
}

async function pdfOf(labels: readonly PositionLabel[], paper: LabelPaper, speech: Voice): Promise<Uint8Array> {
  // The PDF maker is large, and is fetched only once there is something to print.
  const { makeLabels } = await import('../make-pdf.ts');
  return makeLabels(labels, { paper, speech, now: new Date().toISOString() });
}

function labelsAsked(plant: Plant, { line, position }: LabelsCall, speech: Voice): readonly PositionLabel[] {
  for (const value of line ?? []) {
    if (Object.hasOwn(plant.lines, value)) continue;
    const known = Object.keys(plant.lines).slice(0, 20).join(', ');
    throw new Stop(speech.say('labels.unknown-line', { value, plant: plant.name, known }), 1);
  }
  for (const value of position ?? []) {
    if (Object.hasOwn(plant.positions, value)) continue;
    const said = speech.say('terminal.unknown-position', { value, plant: plant.name });
    throw new Stop(`${said} ${speech.say('terminal.see-lines')}`, 1);
  }
  const labels = positionLabels(plant, {
    ...(line === undefined ? {} : { lines: line }),
    ...(position === undefined ? {} : { positions: position }),
  });
  if (labels.length === 0) throw new Stop(speech.say('labels.empty'), 1);
  return labels;
}
