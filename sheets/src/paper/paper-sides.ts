import type { Drawing, Page, Shape } from '../page/page.ts';
import { backBody } from './back.ts';
import type { Flowed } from './flow.ts';
import { type Frame, frameOf, type Room } from './frame.ts';
import { frontBody, numberedSteps } from './front.ts';
import { backHead, foot, frontHead } from './head-foot.ts';
import type { Paper } from './paper-size.ts';
import type { PaperStyle } from './piece.ts';

const roomy: readonly PaperStyle[] = [8.8, 8.4, 8].map((size) => ({ size, runIn: false, formulaSources: true }));
const close: readonly PaperStyle[] = [8.2, 8, 7.8, 7.6, 7.5].map((size) => ({
  size,
  runIn: true,
  formulaSources: false,
}));
/** For reasons, and for cards of unusual length. */
const small: readonly PaperStyle[] = [7.2, 6.9, 6.6, 6.3, 6, 5.6, 5.2].map((size) => ({
  size,
  runIn: true,
  formulaSources: false,
}));

/** The last steps, done after the press, may stand overleaf: the sheet is turned while the press is closed. */
const mostOverleaf = 3;

interface Attempt {
  readonly steps: number;
  readonly flowed: Flowed;
}

/** The first way of setting a side in which everything fits; failing that, the last, with what there is room for. */
function fitted(attempts: Iterable<() => Attempt>): Attempt {
  let last: Attempt = { steps: 0, flowed: { shapes: [], left: [] } };
  for (const attempt of attempts) {
    last = attempt();
    if (last.flowed.left.length === 0) return last;
  }
  return last;
}

/** All steps in a readable size; else fewer steps; only then smaller type. */
function* frontAttempts(page: Page, frame: Frame, room: Room): Generator<() => Attempt> {
  const all = numberedSteps(page).length;
  const tryWith = (steps: number, style: PaperStyle) => () => ({
    steps,
    flowed: frontBody(page, steps, frame, room, style),
  });
  for (const style of [...roomy, ...close]) yield tryWith(all, style);
  for (let steps = all - 1; steps >= all - mostOverleaf; steps -= 1) {
    for (const style of close.slice(-2)) yield tryWith(steps, style);
  }
  for (const style of small) yield tryWith(all - mostOverleaf, style);
}

function* backAttempts(page: Page, steps: number, frame: Frame, room: Room): Generator<() => Attempt> {
  for (const style of [...roomy, ...close, ...small]) {
    yield () => ({ steps, flowed: backBody(page, steps, frame, room, style) });
  }
}

function sideDrawing(page: Page, number: 1 | 2, frame: Frame, shapes: readonly Shape[]): Drawing {
  return { id: `side-${number}`, alt: page.title, width: frame.width, height: frame.height, shapes };
}

/**
 * A page on one sheet: the front for the doing, the back for wide drawings and reasons. One unit is a point.
 * @param page - the page
 * @param paper - the paper
 * @returns the two sides as drawings
 */
export function paperSides(page: Page, paper: Paper): readonly [front: Drawing, back: Drawing] {
  const frame = frameOf(paper);
  const heads = [frontHead(page, frame), backHead(page, frame)] as const;
  const feet = [foot(page, 1, frame), foot(page, 2, frame)] as const;
  const front = fitted(frontAttempts(page, frame, { top: heads[0].end + 4, bottom: feet[0].top }));
  const back = fitted(backAttempts(page, front.steps, frame, { top: heads[1].end + 4, bottom: feet[1].top }));
  return [
    sideDrawing(page, 1, frame, [...heads[0].shapes, ...front.flowed.shapes, ...feet[0].shapes]),
    sideDrawing(page, 2, frame, [...heads[1].shapes, ...back.flowed.shapes, ...feet[1].shapes]),
  ];
}
