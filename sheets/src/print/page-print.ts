import type { Page } from '../page/page.ts';
import { type FlowPaper, flowSheets } from '../paper/flow-sheets.ts';
import { paperSides } from '../paper/paper-sides.ts';
import type { Paper } from '../paper/paper-size.ts';
import type { Print } from './print.ts';

/**
 * The card on one sheet, front and back.
 * @param page - the page
 * @param paper - `A5` or `half-letter`
 */
export function cardPrint(page: Page, paper: Paper): Print {
  return { sheets: paperSides(page, paper), ...factsOf(page) };
}

/**
 * A page over as many sheets as it needs: a press cycle, the record of a run.
 * @param page - the page
 * @param paper - `A4`, `A5` or `letter`
 */
export function flowPrint(page: Page, paper: FlowPaper): Print {
  return { sheets: flowSheets(page, paper), ...factsOf(page) };
}

function factsOf({ title, subtitle, language, now }: Page): Omit<Print, 'sheets'> {
  return { title: `${title} · ${subtitle}`, language, now };
}
