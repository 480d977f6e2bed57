import type { Section } from '@loopwright/sheets';
import { useState } from 'react';
import { Mark } from '../../page/mark.tsx';
import { SectionView } from '../../page/page-view.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

/** Every number that the cycle rests on, when somebody asks. */
export function CycleRests({ sections }: { readonly sections: readonly Section[] }) {
  const { say } = useSpeech();
  const [open, setOpen] = useState(false);
  if (sections.length === 0) return null;
  return (
    <>
      <button type="button" className="button more-button" aria-expanded={open} onClick={() => setOpen(!open)}>
        {say('recipes.rests')}
        <Mark name="down" />
      </button>
      {open ? sections.map((section) => <SectionView key={section.id} section={section} />) : null}
    </>
  );
}
