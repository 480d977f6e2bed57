import { Refusal } from '@loopwright/engine/refusal';
import { type SpliceCard, spliceCard } from '@loopwright/jobs';
import { runIdOf, startRun } from '@loopwright/jobs/press-run';
import type { Plant } from '@loopwright/plant';
import { runSigns } from '@loopwright/records/run';
import { sentence } from '@loopwright/words';
import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { ChoiceGroup } from '../../settings/choice-group.tsx';
import { useSettings } from '../../settings/use-settings.tsx';
import { Bar } from '../../shell/bar.tsx';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { faultSentence } from '../../store/fault-sentence.ts';
import { runNow, useOpenRuns } from '../../store/use-runs.ts';
import { useStore } from '../../store/use-store.tsx';
import { cardAddress } from '../card/card-address.ts';
import { readySound } from './alarm-sound.ts';
import { runAddress } from './run-address.ts';

interface StartRunProps {
  readonly plant: Plant;
  readonly position: string;
  readonly now: string;
  readonly card: string | undefined;
}

/** What a run asks once, before it begins. */
export function StartRun({ plant, position, now, card }: StartRunProps) {
  const { say } = useSpeech();
  return (
    <div className="shell">
      <Bar place="run" plant={plant} card={card} back={{ href: cardAddress(position), to: say('runs.start.back') }} />
      <main className="pane run-start">
        {Object.hasOwn(plant.positions, position) ? (
          <Questions plant={plant} position={position} now={now} />
        ) : (
          <Said title={say('app.card.unknown', { position })} next={say('app.card.unknown.next')} toLines />
        )}
      </main>
    </div>
  );
}

function Questions({ plant, position, now }: Omit<StartRunProps, 'card'>) {
  const { say } = useSpeech();
  const { settings, change } = useSettings();
  const { state } = useStore();
  const underWay = useOpenRuns();
  const taken = underWay.map(({ started }) => started.slot);
  const { begin, working, fault } = useBegin({ plant, position, now, taken });
  const open = underWay.find(({ started }) => started.things.position.id === position);
  const card = useCard(plant, position, now);
  const press = card?.press.press;
  // After the splice was lifted out the press is free again.
  const inPress = underWay.find(
    ({ started: { things }, settled }) =>
      things.press?.id === press?.id && things.position.id !== position && settled['lift-out'] === undefined,
  );
  return (
    <>
      <h1>{say('runs.start.title', { position })}</h1>
      <p>{say('runs.start.first')}</p>
      <ChoiceGroup
        title={say('app.people')}
        options={([1, 2] as const).map((value) => ({ value, shown: say(`app.people.${value}`) }))}
        chosen={settings.people ?? 1}
        onChoose={(people) => change({ people })}
      />
      <ChoiceGroup
        title={say('runs.pace')}
        options={(['steps', 'groups'] as const).map((value) => ({ value, shown: say(`runs.pace.${value}`) }))}
        chosen={settings.pace ?? 'steps'}
        onChoose={(pace) => change({ pace })}
      />
      {press === undefined || inPress === undefined ? null : (
        <p className="caution caution-care">
          {say('runs.start.press-taken', { press: press.name, position: inPress.started.things.position.id })}
        </p>
      )}
      {state.badge === undefined ? <p className="strong">{say('runs.start.badge')}</p> : null}
      <p className="soft">{say('runs.start.rules')}</p>
      {fault === undefined ? null : <p role="alert">{fault}</p>}
      {open === undefined ? null : (
        <Link href={runAddress(open.id)} className="button main-action">
          {say('runs.start.resume')}
        </Link>
      )}
      <button
        type="button"
        className={open === undefined ? 'button main-action' : 'button'}
        disabled={working}
        onClick={begin}
      >
        {say(open === undefined ? 'runs.start' : 'runs.start.another')}
      </button>
    </>
  );
}

/** The card as it would be now; none where something about it is refused, which the tap then says. */
function useCard(plant: Plant, position: string, now: string): SpliceCard | undefined {
  const { settings } = useSettings();
  const { people = 1, press } = settings;
  return useMemo(() => {
    try {
      return cardOf(plant, position, { now, people, press });
    } catch {
      return undefined;
    }
  }, [plant, position, now, people, press]);
}

interface CardNow {
  readonly now: string;
  readonly people: 1 | 2;
  /** The one chosen in the settings, where the plant has it. */
  readonly press: string;
}

function cardOf(plant: Plant, position: string, { now, people, press }: CardNow): SpliceCard {
  return spliceCard(plant, position, { now, people, ...(Object.hasOwn(plant.presses, press) ? { press } : {}) });
}

interface Begin extends Omit<StartRunProps, 'card'> {
  /** Places of the runs under way: a new one takes another. */
  readonly taken: readonly number[];
}

/** Computes the card once more, so that the run holds the numbers of this moment, and writes the first events. */
function useBegin({ plant, position, now, taken }: Begin) {
  const speech = useSpeech();
  const { settings } = useSettings();
  const { store, state } = useStore();
  const [, goTo] = useLocation();
  const [working, setWorking] = useState(false);
  const [fault, setFault] = useState<string>();
  const begin = async () => {
    void readySound();
    setWorking(true);
    try {
      const people = settings.people ?? 1;
      const card = cardOf(plant, position, { now, people, press: settings.press });
      const slot = runSigns.findIndex((_, at) => !taken.includes(at));
      const run = runIdOf(position, runNow(store, state));
      await store.append(startRun(card, { run, people, slot: Math.max(slot, 0) }));
      goTo(runAddress(run), { replace: true });
    } catch (cause) {
      setFault(cause instanceof Refusal ? sentence(speech, cause) : faultSentence(speech, cause));
      setWorking(false);
    }
  };
  return { begin: () => void begin(), working, fault };
}
