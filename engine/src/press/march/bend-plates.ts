import { bendField } from './bend-field.ts';
import { record } from './cells.ts';
import { chain, chainRow, EXTRA } from './chain.ts';
import { type End, endField } from './end.ts';
import { lossAt_W_m2 } from './end-loss.ts';
import { shareAtStage } from './fold.ts';
import { driveHeaters, heaterField } from './heaters.ts';
import type { Slab } from './slab.ts';

const { START, V, X, OFF: CELL_OFF, STRIDE } = record;
const { TOP_OFF, BOTTOM_OFF, TOP, BOTTOM, TOP_LOSS, BOTTOM_LOSS, PLUG, COUNT } = bendField;
const { OFF, START_SHARE, START_LOSS, LOSS_SLOPE } = endField;
const { START_TOP, START_BOTTOM, START_PLUG } = heaterField;
const { TOP: TOP_HEAT, BOTTOM: BOTTOM_HEAT, PLUG: PLUG_POWER } = heaterField;
const { TOP_BY_TOP, TOP_BY_BOTTOM, BOTTOM_BY_TOP, BOTTOM_BY_BOTTOM, PLUG_BY_TOP, PLUG_BY_BOTTOM } = heaterField;

/**
 * What heaters and losses bend at a stage, and what of all stages so far counts for the solution that comes next.
 *
 * @param slab - slab with the earlier solutions and the stage's cells, changed
 * @param stage - number of the stage [1], 1 to 5
 * @param link - which solution comes next [1]
 * @returns nothing
 * @source Rosenbrock method, see `chain.ts`
 */
export function bendPlates(slab: Slab, stage: number, link: number): void {
  const { bends, top, bottom, cells } = slab;
  const own = stage * COUNT;
  const last = cells.count * STRIDE;
  if (slab.losing) {
    bends[own + TOP_OFF] = cells.numbers[STRIDE + CELL_OFF] as number;
    bends[own + BOTTOM_OFF] = cells.numbers[last + CELL_OFF] as number;
    bends[own + TOP_LOSS] = bentLoss(top, cells.numbers, STRIDE, stage);
    bends[own + BOTTOM_LOSS] = bentLoss(bottom, cells.numbers, last, stage);
  }
  if (top.following || bottom.following) bendHeaters(slab, stage, own);
  weighBends(bends, link);
  top.numbers[OFF + link] = bends[TOP_OFF] as number;
  bottom.numbers[OFF + link] = bends[BOTTOM_OFF] as number;
}

function bentLoss(end: End, numbers: Float64Array, j: number, stage: number): number {
  const row = stage * chainRow;
  const { stage: weights } = chain;
  const early = (weights[row] as number) * (numbers[j + V] as number);
  const middle = (weights[row + 1] as number) * (numbers[j + V + 1] as number);
  const late = (weights[row + 2] as number) * (numbers[j + V + 2] as number);
  const last = (weights[row + 3] as number) * (numbers[j + V + 3] as number);
  const gained = early + middle + (late + last) + (weights[row + EXTRA] as number) * (numbers[j + X] as number);
  const { numbers: e } = end;
  const plate_degC = (numbers[j + START] as number) + gained + (numbers[j + CELL_OFF] as number);
  return lossAt_W_m2(end, plate_degC) - ((e[START_LOSS] as number) + (e[LOSS_SLOPE] as number) * gained);
}

function bendHeaters({ bends, top, bottom, heaters: h }: Slab, stage: number, own: number): void {
  const topShare = shareAtStage(top, stage);
  const bottomShare = shareAtStage(bottom, stage);
  driveHeaters(h, topShare, bottomShare);
  const byTop = topShare - (top.numbers[START_SHARE] as number);
  const byBottom = bottomShare - (bottom.numbers[START_SHARE] as number);
  const straightTop = (h[TOP_BY_TOP] as number) * byTop + (h[TOP_BY_BOTTOM] as number) * byBottom;
  const straightBottom = (h[BOTTOM_BY_TOP] as number) * byTop + (h[BOTTOM_BY_BOTTOM] as number) * byBottom;
  const straightPlug = (h[PLUG_BY_TOP] as number) * byTop + (h[PLUG_BY_BOTTOM] as number) * byBottom;
  bends[own + TOP] = (h[TOP_HEAT] as number) - (h[START_TOP] as number) - straightTop;
  bends[own + BOTTOM] = (h[BOTTOM_HEAT] as number) - (h[START_BOTTOM] as number) - straightBottom;
  bends[own + PLUG] = (h[PLUG_POWER] as number) - (h[START_PLUG] as number) - straightPlug;
}

/** What of the stages so far counts for the solution that comes next; nobody asks for the plug's on the way. */
function weighBends(bends: Float64Array, link: number): void {
  const row = link * chainRow;
  const b1 = chain.bend[row + 1] as number;
  const b2 = chain.bend[row + 2] as number;
  const b3 = chain.bend[row + 3] as number;
  const b4 = chain.bend[row + 4] as number;
  const b5 = chain.bend[row + 5] as number;
  for (let field = 0; field < PLUG; field += 1) {
    const early = b1 * (bends[field + COUNT] as number) + b2 * (bends[field + 2 * COUNT] as number);
    const late = b3 * (bends[field + 3 * COUNT] as number) + b4 * (bends[field + 4 * COUNT] as number);
    bends[field] = early + late + b5 * (bends[field + 5 * COUNT] as number);
  }
}
