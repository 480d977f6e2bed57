import type { PressCycleReport } from '@loopwright/jobs';
import type { Block, Page } from '@loopwright/sheets';
import { BlockView } from '../../page/block-view.tsx';
import { keyed } from '../../page/keyed.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { Things } from './start-of.ts';

interface CycleNotesProps {
  readonly things: Things;
  readonly report: PressCycleReport;
  readonly page: Page;
}

/** What stands in the way of the answer, before anything is moved. */
export function CycleWarnings({ page }: Pick<CycleNotesProps, 'page'>) {
  return warningsOf(page, (level) => level !== 'note').map(({ key, item }) => <BlockView key={key} block={item} />);
}

/** What else somebody must know of it: whose recipe it is, what of it nobody has measured. */
export function CycleNotes({ things, report, page }: CycleNotesProps) {
  const { say } = useSpeech();
  const { belt, press, recipe } = things;
  const examples = examplesIn(report);
  const isOfBelt = recipe.belt === belt.id;
  const isOfPress = recipe.press === undefined || recipe.press === press.id;
  const notes = [
    ...(isOfBelt ? [] : [say('recipes.other-belt', { recipe: recipe.id, other: recipe.belt, belt: belt.id })]),
    ...(isOfPress ? [] : [say('recipes.other-press', { recipe: recipe.id, press: press.name })]),
    ...(examples > 0 ? [say('recipes.example-press', { press: press.name, count: examples })] : []),
    say('recipes.sheet-wins'),
  ];
  return (
    <div className="cycle-notes">
      {warningsOf(page, (level) => level === 'note').map(({ key, item }) => (
        <BlockView key={key} block={item} />
      ))}
      {notes.map((text) => (
        <BlockView key={text} block={{ kind: 'caution', level: 'note', text }} />
      ))}
    </div>
  );
}

type Level = Extract<Block, { kind: 'caution' }>['level'];

function warningsOf(page: Page, isWanted: (level: Level) => boolean) {
  const all = page.front.find(({ id }) => id === 'warnings')?.blocks ?? [];
  return keyed(all.filter((block) => block.kind === 'caution' && isWanted(block.level)));
}

/** How many numbers of press and stack stand in for what nobody has entered. */
function examplesIn({ cycle }: PressCycleReport): number {
  if (cycle?.status !== 'ok') return 0;
  const ofPress = cycle.numbers.filter(({ group }) => group === 'press' || group === 'stack');
  return ofPress.filter(({ quantity }) => quantity.source === 'example').length;
}
