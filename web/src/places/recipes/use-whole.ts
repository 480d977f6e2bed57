import { type PressCycleReport, type RecipeCycleChoice, recipeCycleReport } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { cyclePage, type Page } from '@loopwright/sheets';
import type { Voice } from '@loopwright/words';
import { useEffect, useState } from 'react';

/** A hand that rests this long has stopped moving the slider. */
const rest_ms = 120;

interface Asked {
  readonly plant: Plant;
  readonly choice: RecipeCycleChoice;
  readonly now: string;
  readonly speech: Voice;
}

export interface WholeCycle {
  readonly report: PressCycleReport;
  readonly page: Page;
}

/** A cycle with its ranges, and the page that says it. */
export function wholeCycle({ plant, choice, now, speech }: Asked): WholeCycle {
  const report = recipeCycleReport(plant, choice, now);
  return { report, page: cyclePage(report, speech) };
}

/** The same, once the hand rests: what stands below the curve need not follow each step of a slider. `isOfNow` says whether it has. */
export function useWhole({ plant, choice, now, speech }: Asked): WholeCycle & { readonly isOfNow: boolean } {
  const [whole, setWhole] = useState(() => wholeCycle({ plant, choice, now, speech }));
  const [shown, setShown] = useState({ plant, choice, now, speech });
  const isShown = shown.plant === plant && shown.choice === choice && shown.now === now && shown.speech === speech;
  useEffect(() => {
    if (isShown) return;
    const timer = setTimeout(() => {
      setWhole(wholeCycle({ plant, choice, now, speech }));
      setShown({ plant, choice, now, speech });
    }, rest_ms);
    return () => clearTimeout(timer);
  }, [isShown, plant, choice, now, speech]);
  return { ...whole, isOfNow: isShown };
}
