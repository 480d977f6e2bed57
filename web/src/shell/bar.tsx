import type { Plant } from '@loopwright/plant';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useAfterFirstPaint } from '../offline/use-after-first-paint.ts';
import { Mark } from '../page/mark.tsx';
import { recipesAddress } from '../places/recipes/recipes-address.ts';
import { SettingsPanel } from '../settings/settings-panel.tsx';
import { useSpeech } from '../speech/use-speech.tsx';
import { WhoWorks } from '../who/who-works.tsx';

/** Where somebody is, as the bar marks it. */
export type PlaceOfBar = 'lines' | 'card' | 'stores' | 'start' | 'scan' | 'recipes' | 'run';

interface BarProps {
  readonly place: PlaceOfBar;
  readonly plant: Plant | undefined;
  /** Where the card leads: the one that is open, else the torn one. */
  readonly card: string | undefined;
  /** Where the way back leads on a phone; default: to the lines. */
  readonly back?: { readonly href: string; readonly to: string } | undefined;
}

/** On a phone the bar above the page, on a wide screen the column of places on its left. */
export function Bar({ place, plant, card, back }: BarProps) {
  const { say } = useSpeech();
  const [path] = useLocation();
  // Settings that stay open would hide what somebody has gone to.
  const [openAt, setOpenAt] = useState<string>();
  const open = openAt === path;
  // What people come for is drawn before them: on a phone nobody sees them until they are opened.
  const stands = useAfterFirstPaint();
  return (
    <header className="bar" data-place={place} data-back={back !== undefined}>
      <p className="brand">Loopwright</p>
      <Link href={back?.href ?? '/'} className="back">
        <Mark name="left" />
        {back?.to ?? say('app.lines')}
      </Link>
      <Places place={place} card={card} />
      <WhoWorks />
      <button
        type="button"
        className="button settings-button"
        aria-expanded={open}
        aria-controls="settings"
        onClick={() => setOpenAt(open ? undefined : path)}
      >
        <Mark name="settings" />
        <span className="sr">{say('app.settings')}</span>
      </button>
      <div id="settings" className={open ? 'settings' : 'settings is-closed'}>
        {stands || open ? <SettingsPanel plant={plant} /> : null}
      </div>
    </header>
  );
}

function Places({ place, card }: Pick<BarProps, 'place' | 'card'>) {
  const { say } = useSpeech();
  return (
    <nav className="places" aria-label={say('app.places')}>
      <Link href="/" className="place" aria-current={place === 'lines' ? 'page' : undefined}>
        {say('app.lines')}
      </Link>
      {card === undefined ? null : (
        <Link href={card} className="place place-card" aria-current={place === 'card' ? 'page' : undefined}>
          {say('card.title')}
        </Link>
      )}
      <Link href={recipesAddress} className="place" aria-current={place === 'recipes' ? 'page' : undefined}>
        {say('app.recipes')}
      </Link>
      <Link href="/stores" className="place" aria-current={place === 'stores' ? 'page' : undefined}>
        {say('stores.title')}
      </Link>
    </nav>
  );
}
