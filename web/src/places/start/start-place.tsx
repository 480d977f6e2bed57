import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import { cardAddress } from '../card/card-address.ts';
import { LineGeometry } from '../stores/line/line-geometry-later.tsx';
import { storesAddress } from '../stores/store-address.ts';
import { NameStep } from './name-step.tsx';
import { PositionsStep } from './positions-step.tsx';
import { type StartState, startState } from './start-steps.ts';
import { StartStrip } from './start-strip.tsx';
import { ThingStep } from './thing-step.tsx';

/** From nothing to a first card: one question a screen, left and taken up again at any time. */
export function StartPlace() {
  const { state } = useStore();
  const at = startState(state.plant, !state.demo && !state.empty);
  const place = useRef<HTMLDivElement>(null);
  const { step } = at;
  useEffect(() => {
    if (step !== undefined) arriveAt(place.current);
  }, [step]);
  return (
    <>
      <StartStrip step={step} />
      <div ref={place} key={step} data-start={step}>
        <Step at={at} />
      </div>
    </>
  );
}

/** Each step starts at its top, by eye and by ear, with the first thing to type in hand. */
function arriveAt(place: HTMLElement | null): void {
  window.scrollTo(0, 0);
  const first = place?.querySelector<HTMLElement>('input[type="text"]') ?? place?.querySelector<HTMLElement>('h1');
  first?.focus({ preventScroll: true });
}

function Step({ at }: { readonly at: StartState }) {
  const { say } = useSpeech();
  const { state, store } = useStore();
  if (at.step === 'name') return <NameStep store={store} demo={state.demo} />;
  if (at.step === 'ready') return <Ready position={at.position} />;
  if (at.step === 'positions') return <PositionsStep store={store} line={at.line} />;
  if (at.step === 'measure') {
    return (
      <>
        <h1 tabIndex={-1}>{say('geometry.title', { line: at.line.id })}</h1>
        <LineGeometry store={store} plant={state.plant} line={at.line} action={say('start.next')} />
      </>
    );
  }
  return <ThingStep store={store} plant={state.plant} kind={at.step} />;
}

/** The card may be opened; what it lacks stands on it. */
function Ready({ position }: { readonly position: string }) {
  const { say } = useSpeech();
  return (
    <div className="said">
      <h1 tabIndex={-1}>{say('start.ready')}</h1>
      <p>{say('start.ready.help')}</p>
      <Link href={cardAddress(position)} className="button main-action">
        {say('start.ready.card', { position })}
      </Link>
      <Link href={storesAddress} className="button">
        {say('start.ready.more')}
      </Link>
    </div>
  );
}
