import type { Page } from '@loopwright/sheets';
import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { trialAddress } from '../recipes/recipes-address.ts';
import { newRunAddress } from '../run/run-address.ts';
import { PdfButton } from './pdf-button.tsx';

/** What one does with a card that has been read: take it along on paper. */
export function CardEnds({ page, position }: { readonly page: Page; readonly position: string }) {
  const { say } = useSpeech();
  return (
    <div className="ends">
      <Link href={newRunAddress(position)} className="button main-action">
        {say('runs.begin-here')}
      </Link>
      <PdfButton page={page} position={position} />
      <button type="button" className="button" onClick={() => window.print()}>
        {say('app.print')}
      </button>
      <Link href={trialAddress('position', position)} className="button">
        {say('recipes.open-cycle')}
      </Link>
    </div>
  );
}
