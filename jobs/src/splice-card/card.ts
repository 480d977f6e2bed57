import type { Belt, Die, Line, Position, Pulley, Roll } from '@loopwright/plant';
import type { PositionState } from '../lines/position-state.ts';
import type { LengthSource } from '../loop/endless-length.ts';
import type { NoLoop } from '../loop/loop.ts';
import { cycleWarningCodes } from '../press-cycle/cycle-warnings.ts';
import type { Quantity } from '../quantity.ts';
import type { CardPress } from './card-press.ts';

export * from './card-press.ts';

/** Things that may be unknown to the plant; the card says what to measure and goes on. */
export const missingCodes = [
  'die',
  'template',
  'press',
  'recipe',
  'roll',
  'path',
  'take-up-stroke',
  'take-up-position',
  'drive',
  'neutral-line',
  'press-check',
  'dry-data',
  'data-sheet',
  'loop-length',
] as const;
export type MissingCode = (typeof missingCodes)[number];

/** What a card warns of. `stop` means: do not go on before this is settled. */
export const cardWarningCodes = [
  'pulley-under-limit',
  'counter-bend-under-limit',
  'slip',
  'slip-reserve-low',
  'elongation-under-window',
  'elongation-over-window',
  'not-in-place',
  'sources-disagree',
  'take-up-exhausted',
  'press-check-overdue',
  'press-check-unknown',
  'press-check-ahead',
  'press-too-small',
  'belt-wider-than-pulley',
  'thin-edge-finger',
  'roll-too-short',
  'roll-not-sealed',
  'bag-pressure-over-press',
  'wet-area',
  'antistatic-area',
  'explosive-area',
  'food-area',
  'take-up-on-tight-side',
  ...cycleWarningCodes,
] as const;
export type CardWarningCode = (typeof cardWarningCodes)[number];

export interface CardWarning {
  readonly code: CardWarningCode;
  readonly level: 'stop' | 'care' | 'note';
  /** Values of the sentence, each a quantity or a name. */
  readonly data: Readonly<Record<string, Quantity | string | number>>;
}

/** Questions to settle before anything is cut. */
export const causeCodes = [
  'rollers-spin',
  'build-up',
  'sharp-edge',
  'seized-snub',
  'wet-bed',
  'keep-torn-piece',
] as const;
export type CauseCode = (typeof causeCodes)[number];

/** What must lie ready before the knife comes out. */
export const gatherCodes = [
  'belt-roll',
  'die',
  'template',
  'press',
  'lead',
  'release-cloth',
  'edge-strips',
  'dummy-pieces',
  'gloves-glasses',
  'lock-and-tag',
  'knife-square-tape',
  'chalk',
  'resistance-meter',
] as const;
export type GatherCode = (typeof gatherCodes)[number];

export interface GatherItem {
  readonly code: GatherCode;
  /** Which one, where it lies, how much is needed; whatever the plant knows. */
  readonly thing?: string;
  readonly place?: string;
  readonly needed?: Quantity;
  readonly left?: Quantity;
}

export interface CardLengths {
  /** Endless length of the slack belt. */
  readonly endless: Quantity;
  readonly tipToTip: Quantity;
  /** Square cut before punching. */
  readonly square: Quantity;
  readonly fingerLength: Quantity;
  readonly waste: Quantity;
  readonly sources: readonly LengthSource[];
  /** False when the sources differ by more than chance allows. */
  readonly sourcesAgree: boolean;
  /** Between the two sources that differ most. */
  readonly difference: Quantity;
}

/** Lateral phase of the fingers, both ends the same way up and against the same fence. */
export interface CardPhase {
  readonly setting: 'tip' | 'flank';
  /** Distance of the first tip from the fence-side belt edge. */
  readonly firstTip: Quantity;
  /** How far to move the fence before punching the second end; 0 when it stays. */
  readonly secondEndFenceMove: Quantity;
  /** Width of the thinnest edge finger, and what it should be at least. */
  readonly score: Quantity;
  readonly threshold: Quantity;
  /** How far one end turned over shifts the mesh. */
  readonly turnedOverShift: Quantity;
}

export interface CardMarks {
  readonly before: Quantity;
  readonly after: Quantity;
  readonly elongation: Quantity;
  readonly strandTension: Quantity;
  readonly freshTension: Quantity;
}

export interface CardTakeUp {
  readonly kind: Line['takeUpKind'];
  readonly stroke?: Quantity;
  readonly standsAt?: Quantity;
  /** Travel at which the new belt has its set elongation, and at which it just lies slack. */
  readonly setAt?: Quantity;
  readonly slackAt?: Quantity;
  /** Travel left after this splice. */
  readonly leftAfter?: Quantity;
  /** Travel needed from slack to set, with the slack that hands need to mesh. */
  readonly neededToMesh?: Quantity;
  readonly meshesInPlace?: boolean;
  /** Loop length that must be pulled in, or travel that is missing. */
  readonly pullNeeded?: Quantity;
  readonly travelMissing?: Quantity;
  /** The same belt cut and spliced again. */
  readonly resplice?: CardResplice;
}

export interface CardResplice {
  readonly givenBack: Quantity;
  readonly stretch: Quantity;
  readonly slack: Quantity;
  readonly needed: Quantity;
  readonly available: Quantity;
  readonly possible: boolean;
  readonly meshesInPlace: boolean;
}

/** Everything the thread-path drawing needs; geometry in metres, order of travel. */
export interface CardPath {
  readonly pulleys: readonly (Pulley & { readonly face: 'running' | 'back'; readonly wrap_rad: number })[];
  /** Tangent points of span i, from pulley i to pulley i + 1: x1, y1, x2, y2. */
  readonly spans: readonly (readonly [x1: number, y1: number, x2: number, y2: number])[];
  readonly length: Quantity;
  /** Index of the drive, the take-up (or -1) and the carrying span. */
  readonly drive: number;
  readonly takeUp: number;
  readonly carryingSpan: number;
  /** Span on which to splice, and the clear length there. */
  readonly spliceSpan: number;
  readonly spliceSpanLength: Quantity;
  /** Goods travel in +x (1) or -x (-1). */
  readonly goodsDirection: 1 | -1;
  readonly carrierDiameter_m?: number;
  readonly carrierPitch_m?: number;
  readonly pressureRollerDiameter_m?: number;
  /** True when a survey gave the coordinates, so the drawing is a sketch to that accuracy. */
  readonly fromSurvey: boolean;
}

export interface CardTension {
  readonly strand: Quantity;
  readonly fresh: Quantity;
  /** What the take-up's travel alone gives, with the tolerance of the cut; marks are better. */
  readonly elongationByTakeUp: Quantity;
  readonly pull: Quantity;
  readonly slipReserve?: Quantity;
  readonly pullAtSlip?: Quantity;
  readonly driveShaftLoad?: Quantity;
  readonly freshDriveShaftLoad?: Quantity;
  readonly elongationForNoSlip?: Quantity;
  /** Days from fitting to the re-tension visit. */
  readonly retensionAfter: Quantity;
}

export const timePartCodes = [
  'isolate',
  'fetch',
  'prepare-thread',
  'mesh-clamp',
  'press',
  'inspect-restart',
  'alone',
] as const;
export type TimePartCode = (typeof timePartCodes)[number];
export interface TimePart {
  readonly code: TimePartCode;
  readonly time: Quantity;
}

export const restartCodes = [
  'tension-three-quarters',
  'tools-counted',
  'guards-on',
  'people-clear',
  'lock-off',
  'jog-three-turns',
  'lock-on',
  'final-tension',
  'unlock',
  'track-outside-guards',
  'watch-splice',
] as const;
export type RestartCode = (typeof restartCodes)[number];

export const inspectCodes = [
  'open',
  'lift-out',
  'lie-flat',
  'trim-flash',
  'both-faces',
  'straight',
  'bend-by-hand',
  'antistatic-resistance',
] as const;
export type InspectCode = (typeof inspectCodes)[number];

/** The whole answer to "a belt tore at this position": what to do, with which numbers, and why. */
export interface SpliceCard {
  readonly now: string;
  readonly engine: string;
  /** Short fingerprint of the inputs: same inputs, same revision. */
  readonly revision: string;
  readonly plant: { readonly id: string; readonly name: string };
  readonly position: Position;
  readonly line: Line;
  readonly state: PositionState;
  readonly revolutions?: Quantity;
  readonly people: 1 | 2;
  readonly time: Quantity;
  readonly timeParts: readonly TimePart[];
  readonly causes: readonly CauseCode[];
  readonly gather: readonly GatherItem[];
  readonly belt: Belt;
  readonly width: Quantity;
  readonly roll?: Roll;
  readonly die?: Die;
  readonly lengths?: CardLengths;
  readonly phase: CardPhase;
  readonly marks: CardMarks;
  readonly path?: CardPath;
  /** Why the entered pulleys make no loop, as the engine refused them. */
  readonly noPath?: NoLoop;
  readonly takeUp: CardTakeUp;
  readonly press: CardPress;
  readonly tension: CardTension;
  readonly spliceStrength?: Quantity;
  readonly dryTime?: Quantity;
  readonly dryTemperature?: Quantity;
  readonly jogTime?: Quantity;
  readonly inspect: readonly InspectCode[];
  readonly restart: readonly RestartCode[];
  readonly warnings: readonly CardWarning[];
  readonly missing: readonly MissingCode[];
}
