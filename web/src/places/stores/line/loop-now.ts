import { beltPath, lengthPerDisplacement, pathUncertainty } from '@loopwright/engine/loop';
import { Refusal } from '@loopwright/engine/refusal';
import { type CardPath, linePath, type NoLoop } from '@loopwright/jobs';
import {
  type Belt,
  byId,
  type Line,
  leadingPulleys,
  linePathInput,
  type Measurement,
  type Plant,
  type Pulley,
  type Survey,
  surveyPulleys,
  surveyUncertainty,
} from '@loopwright/plant';

/** What contributes most to the uncertainty of the length: a measurement, or a pulley by its place in travel order. */
export interface Worst {
  readonly measurement?: Measurement;
  readonly pulley?: number;
  /** Its share of the variance, 0 to 1. */
  readonly share: number;
}

/** A refusal, and what it is about. */
export interface LoopFault extends NoLoop {
  readonly measurement?: Measurement;
  /** Index of the pulley in travel order. */
  readonly pulley?: number;
}

/** What can be computed at this moment from what has been entered. */
export interface LoopNow {
  readonly pulleys: readonly Pulley[];
  readonly path?: CardPath;
  readonly worst?: Worst;
  /** Loop length gained per travel of the take-up, 0 to 2; absent without a take-up. */
  readonly gain?: number;
  readonly fault?: LoopFault;
}

/** The plant as it would be with this survey, or these pulleys, and nothing else for the line. */
export function plantWithLoop(plant: Plant, line: Line, led: Led): Plant {
  const others = <T extends { readonly line: string }>(things: Readonly<Record<string, T>>) =>
    Object.values(things).filter((thing) => thing.line !== line.id);
  return {
    ...plant,
    lines: byId([...Object.values(plant.lines), line]),
    pulleys: byId([...others(plant.pulleys), ...('pulleys' in led ? led.pulleys : [])]),
    surveys: byId([...others(plant.surveys), ...('survey' in led ? [led.survey] : [])]),
  };
}

/** How the belt is led: by a survey or by a table of pulleys. */
export type Led = { readonly survey: Survey } | { readonly pulleys: readonly Pulley[] };

/**
 * The loop as it is computed from what has been entered so far: path and length with its range, or which pulley or
 * measurement stands in the way.
 *
 * @param plant - the rest of it
 * @param line - with its take-up
 * @param belt - that runs there
 * @param led - a survey or pulleys, each complete
 */
export function loopNow(plant: Plant, line: Line, belt: Belt, led: Led): LoopNow {
  try {
    const pulleys = leadingPulleys('survey' in led ? surveyPulleys(led.survey) : led.pulleys);
    return { pulleys, ...computed(plantWithLoop(plant, line, led), line, belt, led, pulleys) };
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    return { pulleys: [], fault: faultOf(problem, []) };
  }
}

function computed(
  plant: Plant,
  line: Line,
  belt: Belt,
  led: Led,
  pulleys: readonly Pulley[],
): Omit<LoopNow, 'pulleys'> {
  try {
    // A survey is asked first: its refusals name the measurement that placed the pulley.
    const worst = 'survey' in led ? worstOfSurvey(led.survey, belt) : worstOfPulleys(pulleys, belt);
    const path = linePath(plant, line, belt);
    if (path === undefined) return {};
    if ('code' in path) return { fault: faultOf(path, pulleys) };
    return { path, worst, ...(path.takeUp < 0 ? {} : { gain: gainOf(pulleys, belt, line, path.takeUp) }) };
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    return { fault: faultOf(problem, pulleys) };
  }
}

function worstOfSurvey(survey: Survey, belt: Belt): Worst {
  const [first] = surveyUncertainty(survey, belt).shares;
  return first === undefined ? { share: 0 } : { measurement: first.field, share: first.share };
}

function worstOfPulleys(pulleys: readonly Pulley[], belt: Belt): Worst {
  const errors = pulleys.map(({ uncertainty_m }) => ({ position_m: uncertainty_m }));
  const all = pathUncertainty(beltPath(linePathInput(pulleys, belt)), errors);
  const effects = all.pulleys.map(({ uncertainty_m }) => uncertainty_m);
  const most = Math.max(...effects);
  const share = all.standardUncertainty_m === 0 ? 0 : (most / all.standardUncertainty_m) ** 2;
  return { pulley: effects.indexOf(most), share };
}

/** Loop length per travel in the take-up's own direction. */
function gainOf(pulleys: readonly Pulley[], belt: Belt, { takeUpX, takeUpY }: Line, takeUp: number): number {
  const size = Math.hypot(takeUpX, takeUpY);
  if (size === 0) return 0;
  return lengthPerDisplacement(beltPath(linePathInput(pulleys, belt)), takeUp, [takeUpX / size, takeUpY / size]);
}

function faultOf({ code, path, data }: NoLoop, pulleys: readonly Pulley[]): LoopFault {
  const fault = { code, path, data };
  const inPath = /^pulleys\[(\d+)\]/.exec(path)?.[1];
  const index = inPath === undefined ? pulleys.findIndex(({ id }) => id === data['pulley']) : Number(inPath);
  const pulley = index < 0 ? {} : { pulley: index };
  return isMeasurement(path) ? { ...fault, ...pulley, measurement: path } : { ...fault, ...pulley };
}

function isMeasurement(path: string): path is Measurement {
  return /(Distance|Drop|Diameter|Before|After)_m$/.test(path) && !path.includes('.');
}
