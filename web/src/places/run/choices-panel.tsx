import type { Choice, RunAction } from '@loopwright/jobs/press-run';
import { useState } from 'react';
import { BadgeShape } from '../../form/badge-shape.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import { useRunShown } from './run-context.tsx';
import { type Tile, Tiles } from './tiles.tsx';

interface ChoicesPanelProps {
  readonly code: string;
  readonly step: string | undefined;
}

/** The tiles of an action that asks: an answer, then a reason where somebody goes on all the same. */
export function ChoicesPanel({ code, step }: ChoicesPanelProps) {
  const { view, words, show, write } = useRunShown();
  const { store } = useStore();
  const sayChoice = useChoiceWords();
  const [chosen, setChosen] = useState<Choice>();
  const back = () => show({ name: 'step' });
  const action = actionOf(code, [view.main, view.fast, ...view.others, ...view.steps.map((each) => each.action)]);
  if (action === undefined) return <Tiles title={words.action(code)} tiles={[]} onBack={back} />;
  const isHeld = action.placement.hold_s === 1;
  const take = async ({ changes = [], code: answer }: Choice) => {
    if (!(await write(changes))) return;
    if (action.code === 'hand-over') await store.chooseBadge(answer);
    back();
  };
  const tile = (choice: Choice, isReason: boolean): Tile => ({
    key: choice.code,
    shown: isReason ? words.reason(choice.code) : sayChoice(action, choice.code),
    held: (isHeld || isReason) && choice.reasons === undefined,
    onTap: () => (choice.reasons === undefined ? void take(choice) : setChosen(choice)),
  });
  const title = step === undefined || step === '' ? words.action(code) : words.step(step);
  if (chosen === undefined) {
    const asksReason = action.code === 'pass' || action.code === 'stop';
    const tiles = (action.choices ?? []).map((each) => tile(each, asksReason));
    return <Tiles title={title} tiles={tiles} onBack={back} />;
  }
  return <Reasons action={action} chosen={chosen} tile={tile} take={take} onBack={() => setChosen(undefined)} />;
}

interface ReasonsProps {
  readonly action: RunAction;
  readonly chosen: Choice;
  readonly tile: (choice: Choice, isReason: boolean) => Tile;
  readonly take: (choice: Choice) => Promise<void>;
  readonly onBack: () => void;
}

/** Why somebody goes on otherwise; or back to the oven, the roll, the press, which asks no reason. */
function Reasons({ action, chosen, tile, take, onBack }: ReasonsProps) {
  const { say } = useSpeech();
  const { words } = useRunShown();
  const sayChoice = useChoiceWords();
  const ways = chosen.code === 'not-dry' || chosen.code === 'differs' ? chosen.code : undefined;
  const turnsBack: readonly Tile[] =
    chosen.changes === undefined
      ? []
      : [
          {
            key: 'turn-back',
            shown: say(`runs.turn-back.${action.code === 'dry' ? 'dry' : 'recipe'}`),
            onTap: () => void take(chosen),
          },
        ];
  return (
    <Tiles
      title={sayChoice(action, chosen.code)}
      said={ways === undefined ? undefined : <p>{words.ways(ways)}</p>}
      tiles={[...turnsBack, ...(chosen.reasons ?? []).map((each) => tile(each, true))]}
      onBack={onBack}
    />
  );
}

function actionOf(code: string, actions: readonly (RunAction | undefined)[]): RunAction | undefined {
  return actions.find((action) => action?.code === code && action.choices !== undefined);
}

/** Words of a choice: of a badge its shape and word, of a deviation its sentence, of a roll its name. */
function useChoiceWords() {
  const { plant, words, view } = useRunShown();
  return (action: RunAction, code: string) => {
    const badge = action.code === 'hand-over' ? plant.badges[code] : undefined;
    if (badge !== undefined) {
      return (
        <>
          <BadgeShape shape={badge.shape} /> {badge.word}
        </>
      );
    }
    const deviation = action.code === 'accept' ? view.deviations.find(({ id }) => id === code) : undefined;
    if (deviation !== undefined) return words.deviation(deviation);
    return action.code === 'roll' ? code : words.choice(code);
  };
}
