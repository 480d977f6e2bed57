import type { CardPath } from '@loopwright/jobs';
import type { Drawing, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import type { Obstacles } from './place-label.ts';
import { arrow, breakMark, lettering, type Point, polyline, rounded, textSize } from './shapes.ts';
import { type BeltLine, beltLine, beltOffset } from './thread/belt-line.ts';
import { pulleyNumbers, wordBeside } from './thread/labels.ts';
import { type DrawnPulley, type ThreadLayout, threadLayout } from './thread/layout.ts';
import { type LegendEntry, legend, rollerSample } from './thread/legend.ts';
import {
  breakMarks,
  breakPoints,
  faceRings,
  spliceMark,
  splicePlace,
  takeUpArrow,
  takeUpShapes,
  travelHeads,
} from './thread/marks.ts';
import { drawnRollers } from './thread/rollers.ts';

/** The words of the thread-path drawing in the reader's language. */
export interface ThreadWords {
  readonly alt: string;
  readonly belt: string;
  readonly goods: string;
  readonly drive: string;
  readonly takeUp: string;
  readonly splice: string;
  readonly runningFace: string;
  readonly backFace: string;
  readonly rollers: string;
  readonly shortened: string;
}

const width = 260;
const side = 12;
const aboveRoom = 28;
const belowRoom = 20;
const pathRoom = { w: width - 2 * side, h: 132 } as const;
/** Above this number of pulleys only the drive, the take-up and the splice are named. */
const mostNumbered = 60;

function moved(layout: ThreadLayout, by: Point): ThreadLayout {
  return {
    ...layout,
    pulleys: layout.pulleys.map((p) => ({ ...p, centre: { x: p.centre.x + by.x, y: p.centre.y + by.y } })),
    cutsX: layout.cutsX.map((x) => x + by.x),
    cutsY: layout.cutsY.map((y) => y + by.y),
  };
}

/** Word and arrow in the top band; the arrow points along `sign` in x. */
function directionArrow(word: string, left: number, y: number, sign: number): Shape[] {
  const [from, to] = sign > 0 ? [left, left + 24] : [left + 24, left];
  return [...arrow({ x: from, y: y - 2.8 }, { x: to, y: y - 2.8 }), lettering(word, { x: left + 28, y })];
}

function directions(path: CardPath, belt: BeltLine, words: ThreadWords): Shape[] {
  const strand = belt.strands[path.carryingSpan];
  const beltSign = strand && strand[1].x < strand[0].x ? -1 : 1;
  const y = 9;
  const goodsLeft = width - side - 28 - textWidth(words.goods, textSize);
  return [
    ...directionArrow(words.belt, side, y, beltSign),
    ...directionArrow(words.goods, goodsLeft, y, path.goodsDirection),
  ];
}

function obstaclesOf(layout: ThreadLayout, belt: BeltLine, breaks: readonly { readonly point: Point }[]): Obstacles {
  return {
    segments: [...belt.strands],
    circles: layout.pulleys.map(({ centre, r }) => ({ centre, r: r + beltOffset })),
    boxes: breaks.map(({ point: { x, y } }) => ({ x1: x - 6, y1: y - 6, x2: x + 6, y2: y + 6 })),
    frame: { x1: 1, y1: 13, x2: width - 1, y2: aboveRoom + layout.height + belowRoom },
  };
}

function legendEntries(path: CardPath, layout: ThreadLayout, words: ThreadWords): LegendEntry[] {
  const faces = path.pulleys.map((pulley) => pulley.face);
  const entries: (LegendEntry | false)[] = [
    faces.includes('running') && { sample: (c) => faceRings(c, 4.4, 'running'), text: words.runningFace },
    faces.includes('back') && { sample: (c) => faceRings(c, 4.4, 'back'), text: words.backFace },
    path.carrierDiameter_m !== undefined && { sample: rollerSample, text: words.rollers },
    layout.cutsX.length + layout.cutsY.length > 0 && { sample: shortenedSample, text: words.shortened },
  ];
  return entries.filter((entry) => entry !== false);
}

const shortenedSample = ({ x, y }: Point): Shape[] => [
  polyline(
    [
      { x: x - 7, y },
      { x: x + 7, y },
    ],
    { width: 1.6 },
  ),
  ...breakMark({ x, y }, 8),
];

interface Scene {
  readonly path: CardPath;
  readonly layout: ThreadLayout;
  readonly belt: BeltLine;
  readonly words: ThreadWords;
}

/** Splice, numbers and the words for drive and take-up, each where there is room. */
function named(scene: Scene, obstacles: Obstacles, breaks: ReturnType<typeof breakPoints>): Shape[] {
  const { path, layout, belt, words } = scene;
  const place = splicePlace(path, belt, breaks);
  if (place) {
    const { x, y } = place.point;
    obstacles.boxes.push({ x1: x - 6, y1: y - 6, x2: x + 6, y2: y + 6 });
  }
  const numbers = path.pulleys.length <= mostNumbered ? pulleyNumbers(path, layout.pulleys, belt, obstacles) : [];
  const word = (text: string, pulley: DrawnPulley | undefined): Shape[] =>
    pulley ? wordBeside(text, { centre: pulley.centre, r: pulley.r + beltOffset, angle: Math.PI / 2 }, obstacles) : [];
  return [
    ...numbers,
    ...word(words.drive, layout.pulleys[path.drive]),
    ...word(words.takeUp, layout.pulleys[path.takeUp]),
    ...(place ? spliceMark(place.point, place.angle) : []),
    ...(place ? wordBeside(words.splice, { centre: place.point, r: 5, angle: Math.PI / 2 }, obstacles) : []),
  ];
}

function takeUpTravel(scene: Scene, direction: Point, obstacles: Obstacles): Shape[] {
  const pulley = scene.layout.pulleys[scene.path.takeUp];
  if (!pulley) return [];
  const ends = takeUpArrow(pulley, direction);
  const [xs, ys] = [ends.map(({ x }) => x), ends.map(({ y }) => y)];
  obstacles.boxes.push({
    x1: Math.min(...xs) - 2,
    y1: Math.min(...ys) - 2,
    x2: Math.max(...xs) + 2,
    y2: Math.max(...ys) + 2,
  });
  return takeUpShapes(ends);
}

/**
 * How the belt runs: to scale round its pulleys, long stretches shortened, with the numbers of the pulleys
 * in order of travel, which face touches, the rollers, both directions, the splice site and the take-up's way.
 * @param path - the card's path
 * @param takeUpDirection - the way that lengthens the loop, y up
 * @param words - words in the reader's language
 */
export function threadPath(path: CardPath, takeUpDirection: Point, words: ThreadWords): Drawing {
  const raw = threadLayout(path, pathRoom);
  const layout = moved(raw, { x: (width - raw.width) / 2, y: aboveRoom });
  const belt = beltLine(layout.pulleys);
  const scene: Scene = { path, layout, belt, words };
  const breaks = breakPoints(belt, layout);
  const obstacles = obstaclesOf(layout, belt, breaks);
  const strand = belt.strands[path.carryingSpan];
  const rollers = strand ? drawnRollers(path, strand, layout.scale, layout) : { shapes: [], bands: [] };
  obstacles.boxes.push(...rollers.bands);
  const travel = takeUpTravel(scene, takeUpDirection, obstacles);
  const names = named(scene, obstacles, breaks);
  const top = aboveRoom + layout.height + belowRoom;
  const key = legend(legendEntries(path, layout, words), { x: side, y: top }, width - 2 * side);
  return {
    id: 'thread-path',
    alt: words.alt,
    width,
    height: rounded(top + key.height + 2),
    shapes: [
      ...layout.pulleys.flatMap(({ centre, r }, i) =>
        faceRings(centre, rounded(r), path.pulleys[i]?.face ?? 'running'),
      ),
      ...rollers.shapes,
      { shape: 'path', d: belt.d, fill: 'none', ink: 'ink', width: 1.8 },
      ...breakMarks(breaks),
      ...travelHeads(belt, breaks),
      ...travel,
      ...directions(path, belt, words),
      ...names,
      ...key.shapes,
    ],
  };
}
