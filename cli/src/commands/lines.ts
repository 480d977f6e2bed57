import { linesOverview, type PositionState } from '@loopwright/jobs';
import { type UnitSystem, type Voice, voice } from '@loopwright/words';
import type { Command } from 'commander';
import { addReaderOptions } from '../options.ts';
import { readPlant } from '../read-plant.ts';

/** Shape before word: a state reads without colour. */
const shapes: Readonly<Record<PositionState, string>> = {
  running: '●',
  'retension-due': '▲',
  'past-life': '◆',
  torn: '✕',
  empty: '○',
};

/** `loopwright lines`: every line and position with its state. */
export function addLines(root: Command, speech: Voice): void {
  addReaderOptions(root.command('lines').description(speech.say('terminal.lines')), speech).action(
    async ({ plant: folder, units }: { readonly plant?: string; readonly units: UnitSystem }) => {
      const plant = await readPlant(folder, speech);
      const reader = voice(speech.language, units);
      const { lines } = linesOverview(plant, new Date().toISOString());
      console.log(`${plant.name}\n`);
      for (const each of lines) console.log(`${lineText(each, reader)}\n`);
    },
  );
}

type LineOverview = ReturnType<typeof linesOverview>['lines'][number];

function lineText({ line, belt, positions }: LineOverview, speech: Voice): string {
  const heading = [line.name, belt?.id ?? line.belt, speech.write(line.width_m, 'shortLength')].join(', ');
  const longest = Math.max(0, ...positions.map(({ position }) => position.id.length));
  const rows = positions.map(
    ({ position, state }) => `  ${shapes[state]} ${position.id.padEnd(longest)}  ${speech.say(`state.${state}`)}`,
  );
  return [`${line.id}  ${heading}`, ...rows].join('\n');
}
