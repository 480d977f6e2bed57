import type { DefectCode } from '@loopwright/jobs/inspection';
import type { Shape } from '../../page/page.ts';
import { type Point, polygon, polyline, ring } from '../shapes.ts';

/** Seen from its edge the belt lies flat, or is bent by hand over the radius of a pulley. */
export type Side = 'edge-on' | 'bent';

const thick = 16;
const flatTop = 37;
const bend = { x: 60, y: 128, r: 82 } as const;
const reach = 52;

/** A place of the strip: along it from its middle, and up from its pulley side. */
function at(side: Side, along: number, up: number): Point {
  if (side === 'edge-on') return { x: 60 + along, y: flatTop + thick - up };
  const angle = along / (bend.r + thick / 2);
  const r = bend.r + up;
  return { x: bend.x + r * Math.sin(angle), y: bend.y - r * Math.cos(angle) };
}

/** Upper face of the strip at a place along it, and its lower face. */
interface Profile {
  readonly upper?: (along: number) => number;
  readonly lower?: (along: number) => number;
}

const alongs = Array.from({ length: 53 }, (_, i) => -reach + i * 2);
const smooth = (along: number, half: number): number => Math.exp(-((along / half) ** 4));

function strip(side: Side, { upper = () => thick, lower = () => 0 }: Profile): readonly Shape[] {
  const face = alongs.map((along) => at(side, along, upper(along)));
  const back = alongs.map((along) => at(side, along, lower(along))).toReversed();
  const yarn = alongs.map((along) => at(side, along, thick / 2));
  return [
    polygon([...face, ...back], 'paper', { width: 1.4 }),
    polyline(yarn, { ink: 'soft', width: 1, dash: [3, 2.4] }),
    ...(side === 'bent' ? pulley() : []),
  ];
}

function pulley(): readonly Shape[] {
  const arc = Array.from({ length: 31 }, (_, i) => {
    const angle = -0.62 + (i * 1.24) / 30;
    return { x: bend.x + (bend.r - 3) * Math.sin(angle), y: bend.y - (bend.r - 3) * Math.cos(angle) };
  });
  return [polyline(arc, { ink: 'soft', width: 2 })];
}

interface SideMark extends Profile {
  readonly over?: (side: Side) => readonly Shape[];
}

/** A crack from the upper face down, wider where the strip is bent. */
function crack(side: Side, along: number, depth: number): Shape {
  const wide = side === 'bent' ? 5 : 1.6;
  return polygon(
    [at(side, along - wide, thick), at(side, along, thick - depth), at(side, along + wide, thick)],
    'ink',
    { width: 1 },
  );
}

const faint = (side: Side): readonly Shape[] => [
  polyline([at(side, -14, thick), at(side, 14, 0)], { ink: 'soft', width: 0.7, dash: [1.2, 2.6] }),
];

function sliver(side: Side): readonly Shape[] {
  const lift = side === 'bent' ? 20 : 11;
  return [
    polygon(
      [
        at(side, -12, thick - 3),
        at(side, 4, thick + lift * 0.6),
        at(side, 24, thick + lift),
        at(side, 6, thick + lift * 0.4),
        at(side, -2, thick),
      ],
      'paper',
      { width: 1.6 },
    ),
  ];
}

function lifted(side: Side): readonly Shape[] {
  const under = Array.from({ length: 21 }, (_, i) => at(side, -22 + i * 2.2, thick - 4));
  const over = Array.from({ length: 21 }, (_, i) => {
    const along = -22 + i * 2.2;
    return at(side, along, thick - 4 + 11 * smooth(along, 17));
  });
  const skin = over.map((_, i) => at(side, -22 + i * 2.2, thick + 9.5 * smooth(-22 + i * 2.2, 17)));
  return [
    polygon([...over, ...under.toReversed()], 'ink', { width: 0.6 }),
    polygon([...skin, ...over.toReversed()], 'paper', { width: 1.2 }),
  ];
}

function yarns(side: Side): readonly Shape[] {
  return [-16, -8, 0, 8, 16].map((along) => ring(at(side, along, thick), 3.2, { fill: 'paper', width: 1.6 }));
}

function fins(side: Side): readonly Shape[] {
  const fin = (along: number, way: 1 | -1): Shape =>
    polygon(
      [
        at(side, along, thick),
        at(side, along + way * 5, thick + 9),
        at(side, along + way * 11, thick + 10),
        at(side, along + way * 6, thick),
      ],
      'soft',
      {
        width: 1.2,
      },
    );
  return [fin(-26, -1), fin(-4, 1), fin(20, 1)];
}

/** Two pulleys and a belt that is too long for them. */
function slack(): readonly Shape[] {
  const wheel = (x: number): readonly Shape[] => [
    ring({ x, y: 40 }, 16, { width: 1.4 }),
    ring({ x, y: 40 }, 2, { fill: 'ink' }),
  ];
  const lower = Array.from({ length: 25 }, (_, i) => ({ x: 24 + i * 3, y: 58 + 20 * Math.sin((i / 24) * Math.PI) }));
  return [
    ...wheel(24),
    ...wheel(96),
    polyline(
      [
        { x: 24, y: 22 },
        { x: 96, y: 22 },
      ],
      { width: 2.2 },
    ),
    polyline(lower, { width: 2.2 }),
    polyline(
      [
        { x: 24, y: 58 },
        { x: 96, y: 58 },
      ],
      { ink: 'soft', width: 0.8, dash: [3, 3] },
    ),
  ];
}

/** What a defect does to the picture from the edge; of those not named only the seam is seen. */
const sideMarks: Readonly<Partial<Record<DefectCode, SideMark>>> = {
  'outline-one-face': { over: (side) => [crack(side, 0, 4)] },
  'outline-both-faces': { over: (side) => [-22, 0, 22].map((along) => crack(side, along, 11)) },
  'open-tip': { over: (side) => [crack(side, 10, 16)] },
  'edge-sliver': { over: sliver },
  'thickness-step': { upper: (along) => (along < -12 ? thick : thick + 8) },
  flash: { over: fins },
  'weave-visible': { over: yarns },
  delamination: { over: lifted },
  'over-fused': {
    upper: (along) => thick - 5.5 * smooth(along, 24),
    lower: (along) => 3 * smooth(along, 24),
  },
};

/** The splice from its edge. */
export function sideShapes(defect: DefectCode, side: Side): readonly Shape[] {
  if (defect === 'length-error') return slack();
  const mark = sideMarks[defect] ?? {};
  return [...strip(side, mark), ...faint(side), ...(mark.over?.(side) ?? [])];
}
