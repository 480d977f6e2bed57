import type { Badge } from '@loopwright/plant';
import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { Link } from 'wouter';
import { BadgeShape } from '../form/badge-shape.tsx';
import { newAddress } from '../places/stores/store-address.ts';
import { useSpeech } from '../speech/use-speech.tsx';
import { useStore, useStoreResult } from '../store/use-store.tsx';

/** Who works now, on every screen. Handing over takes two taps: this button, then the tile of the other badge. */
export function WhoWorks() {
  return useStoreResult().status === 'open' ? <Chooser /> : null;
}

function Chooser() {
  const { say } = useSpeech();
  const { store, state } = useStore();
  const [open, setOpen] = useState(false);
  const tiles = useId();
  const button = useRef<HTMLButtonElement>(null);
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  const choose = (badge: string | undefined) => {
    close();
    void store.chooseBadge(badge);
  };
  return (
    <div className="who">
      <button
        ref={button}
        type="button"
        className="button who-now"
        aria-expanded={open}
        aria-controls={tiles}
        onClick={() => setOpen(!open)}
      >
        {state.badge === undefined ? say('who.nobody') : <BadgeSign badge={state.badge} />}
      </button>
      <fieldset
        id={tiles}
        className="who-tiles"
        aria-label={say('who.title')}
        hidden={!open}
        onKeyDown={({ key }: KeyboardEvent) => (key === 'Escape' ? close() : undefined)}
      >
        {open ? <Tiles badges={Object.values(state.plant.badges)} now={state.badge?.id} onChoose={choose} /> : null}
      </fieldset>
    </div>
  );
}

interface TilesProps {
  readonly badges: readonly Badge[];
  readonly now: string | undefined;
  readonly onChoose: (badge: string | undefined) => void;
}

function Tiles({ badges, now, onChoose }: TilesProps) {
  const { say } = useSpeech();
  if (badges.length === 0) {
    return (
      <p>
        {say('who.none')} <Link href={newAddress('badges')}>{say('stores.new.badges')}</Link>
      </p>
    );
  }
  return (
    <>
      {badges.map((badge) => (
        <button
          key={badge.id}
          type="button"
          className="button who-tile"
          aria-pressed={badge.id === now}
          onClick={() => onChoose(badge.id)}
        >
          <BadgeSign badge={badge} />
        </button>
      ))}
      {now === undefined ? null : (
        <button type="button" className="button who-tile" onClick={() => onChoose(undefined)}>
          {say('who.nobody')}
        </button>
      )}
    </>
  );
}

function BadgeSign({ badge }: { readonly badge: Badge }) {
  return (
    <>
      <BadgeShape shape={badge.shape} />
      {badge.word}
    </>
  );
}
