import { engineVersion } from '@loopwright/engine/version';
import type { MessageKey, Voice } from '@loopwright/words';
import { Command } from 'commander';
import { addCard } from './commands/card.ts';
import { addCycle } from './commands/cycle.ts';
import { addExport } from './commands/export.ts';
import { addLabels } from './commands/labels.ts';
import { addLines } from './commands/lines.ts';
import { addPlantCheck } from './commands/plant-check.ts';
import { addReport } from './commands/report.ts';
import { addSolve } from './commands/solve.ts';
import { addVerify } from './commands/verify.ts';
import { addWitness } from './commands/witness.ts';

/** Where a command leaves its exit code. */
export interface End {
  exitCode: number;
}

export const commandNames: readonly string[] = [
  'card',
  'cycle',
  'export',
  'labels',
  'lines',
  'plant',
  'report',
  'solve',
  'verify',
  'witness',
];

const headings: Readonly<Record<string, MessageKey>> = {
  'Usage:': 'terminal.usage',
  'Arguments:': 'terminal.arguments',
  'Options:': 'terminal.options',
  'Commands:': 'terminal.commands',
};

/** The commands of the terminal, with their help in one language. */
export function program(speech: Voice, end: End): Command {
  const root = new Command('loopwright');
  root
    .description(speech.say('terminal.about'))
    .version(engineVersion, '-V, --version', speech.say('terminal.version'))
    .configureHelp({ styleTitle: (title) => headingOf(title, speech) })
    .helpCommand(false);
  addCard(root, speech);
  addCycle(root, speech);
  addExport(root, speech);
  addLabels(root, speech);
  addLines(root, speech);
  addPlantCheck(root, speech, end);
  addReport(root, speech, end);
  addSolve(root, speech, end);
  addVerify(root, speech, end);
  addWitness(root, speech, end);
  quiet(root, speech);
  return root;
}

function headingOf(title: string, speech: Voice): string {
  const key = headings[title];
  return key === undefined ? title : speech.say(key);
}

/** A misunderstood call is thrown, not printed: the sentence is made in one place. */
function quiet(command: Command, speech: Voice): void {
  command
    .exitOverride()
    .allowExcessArguments(false)
    .showSuggestionAfterError(false)
    .helpOption('-h, --help', speech.say('terminal.help'))
    .configureOutput({ writeErr: () => {}, outputError: () => {} });
  for (const below of command.commands) {
    below.copyInheritedSettings(command);
    quiet(below, speech);
  }
}
