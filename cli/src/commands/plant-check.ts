import { problemSentence, type Voice } from '@loopwright/words';
import type { Command } from 'commander';
import { languageOption } from '../options.ts';
import type { End } from '../program.ts';
import { readFolder } from '../read-plant.ts';

/** `loopwright plant check FOLDER`: everything wrong in a plant folder at once. Exit 1 with an error. */
export function addPlantCheck(root: Command, speech: Voice, end: End): void {
  const plant = root.command('plant').description(speech.say('terminal.plant'));
  plant
    .command('check')
    .description(speech.say('terminal.check'))
    .argument('<folder>', speech.say('terminal.folder'))
    .addOption(languageOption(speech))
    .action(async (folder: string) => {
      end.exitCode = await checkFolder(folder, speech);
    });
}

async function checkFolder(named: string, speech: Voice): Promise<number> {
  const { folder, reading } = await readFolder(named, speech);
  const { problems, notes, plant } = reading;
  for (const note of notes) console.log(problemSentence(speech, note));
  for (const problem of problems) console.log(problemSentence(speech, problem));
  const errors = problems.filter(({ level }) => level === 'error').length;
  const care = problems.length - errors + notes.length;
  if (care > 0) console.log(speech.say('terminal.plant-care', { count: care }));
  if (plant === undefined) {
    console.log(speech.say('terminal.plant-wrong', { count: errors, folder }));
    return 1;
  }
  const lines = Object.keys(plant.lines).length;
  const positions = Object.keys(plant.positions).length;
  console.log(speech.say('terminal.plant-right', { folder, lines, positions }));
  return 0;
}
