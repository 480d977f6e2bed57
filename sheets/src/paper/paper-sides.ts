import type { Block, Drawing, Page, Shape } from '../page/page.ts';
import { backBody, type Keep } from './back.ts';
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

const smallestStyle: PaperStyle = { size: 5.2, runIn: true, formulaSources: false };

/** The last steps, done after the press, may stand overleaf: the sheet is turned while the press is closed. */
const mostOverleaf = 3;

/** Drawings that go overleaf where the front would else need smaller type. */
const movable = ['lengths'];

function withDrawingsOverleaf(page: Page): Page {
  const moves = (block: Block): boolean => block.kind === 'drawing' && movable.includes(block.drawing.id);
  const front = page.front.map((section) => ({
    ...section,
    blocks: section.blocks.map((block) => (moves(block) ? { ...block, overleaf: true } : block)),
  }));
  return { ...page, front };
}

/** Drawings that only illustrate what stands in words beside them. */
const sketches = ['recipe-curve'];

function withoutDrawings(page: Page, ids: readonly string[]): Page {
  const stays = (block: Block): boolean => block.kind !== 'drawing' || !ids.includes(block.drawing.id);
  return { ...page, back: page.back.map((section) => ({ ...section, blocks: section.blocks.filter(stays) })) };
}

/** One way of filling a side: which page, how many steps in front, what must stay; in styles from the largest on. */
interface Plan {
  readonly page: Page;
  readonly steps: number;
  readonly keep: Keep;
  readonly styles: readonly PaperStyle[];
}

interface Filled {
  readonly plan: Plan;
  readonly flowed: Flowed;
}

type Fill = (plan: Plan, style: PaperStyle) => Flowed;

/** The largest style of a plan in which everything finds room; undefined when not even the smallest gives it. */
function largestFitting(plan: Plan, fill: Fill): Flowed | undefined {
  const fits = (style: PaperStyle | undefined): Flowed | undefined => {
    const flowed = style && fill(plan, style);
    return flowed?.left.length === 0 ? flowed : undefined;
  };
  const smallest = fits(plan.styles.at(-1));
  if (!smallest) return undefined;
  for (const style of plan.styles.slice(0, -1)) {
    const flowed = fits(style);
    if (flowed) return flowed;
  }
  return smallest;
}

/** The first plan that works; failing all, the last one in its smallest style, with what there is room for. */
function firstWorking(plans: readonly [Plan, ...Plan[]], fill: Fill): Filled {
  for (const plan of plans) {
    const flowed = largestFitting(plan, fill);
    if (flowed) return { plan, flowed };
  }
  const last = plans.at(-1) ?? plans[0];
  return { plan: last, flowed: fill(last, last.styles.at(-1) ?? smallestStyle) };
}

/** All steps in a readable size; else fewer steps, then fewer drawings; only then smaller type. */
function frontPlans(page: Page): readonly [Plan, ...Plan[]] {
  const all = numberedSteps(page).length;
  const overleaf = Array.from({ length: mostOverleaf }, (_, i) => all - 1 - i);
  const bare = withDrawingsOverleaf(page);
  const styles = close.slice(-2);
  const last = { page: bare, steps: all - mostOverleaf, keep: 'all' } as const;
  return [
    { page, steps: all, keep: 'all', styles: [...roomy, ...close] },
    ...overleaf.map((steps) => ({ page, steps, keep: 'all', styles }) as const),
    { ...last, styles },
    { ...last, styles: small },
  ];
}

/** Everything in a size that can be read; else without what can be looked up elsewhere; only then smaller type. */
function backPlans({ page, steps }: Plan): readonly [Plan, ...Plan[]] {
  const bare = withoutDrawings(page, sketches);
  return [
    { page, steps, keep: 'all', styles: [...roomy, ...close, ...small.slice(0, 3)] },
    { page, steps, keep: 'reasons', styles: small.slice(0, 5) },
    { page, steps, keep: 'needed', styles: small.slice(2, 5) },
    { page: bare, steps, keep: 'needed', styles: small.slice(1) },
  ];
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
  const frontRoom: Room = { top: heads[0].end + 4, bottom: feet[0].top };
  const backRoom: Room = { top: heads[1].end + 4, bottom: feet[1].top };
  const front = firstWorking(frontPlans(page), (plan, style) =>
    frontBody(plan.page, plan.steps, frame, frontRoom, style),
  );
  const back = firstWorking(backPlans(front.plan), (plan, style) => backBody(plan.page, plan, frame, backRoom, style));
  return [
    sideDrawing(page, 1, frame, [...heads[0].shapes, ...front.flowed.shapes, ...feet[0].shapes]),
    sideDrawing(page, 2, frame, [...heads[1].shapes, ...back.flowed.shapes, ...feet[1].shapes]),
  ];
}
