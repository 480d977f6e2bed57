import { type RunMeasure, type RunReason, type RunStep, runSteps } from '@loopwright/records/run';

/** Steps that one tap of somebody experienced settles together, in the order of the work. */
export const runGroups = [
  'prepare',
  'lock',
  'site',
  'table',
  'line',
  'match',
  'heat',
  'open',
  'splice',
  'restart',
  'jog',
  'unlock',
  'watch',
] as const;
export type RunGroup = (typeof runGroups)[number];

export interface StepRule {
  readonly group: RunGroup;
  /** Steps that must be settled before this one may be. */
  readonly needs: readonly RunStep[];
  /** True where a tap of its own is needed, in another place or shape than the one before. */
  readonly own?: true;
  /** Why somebody may go on without it; none: it cannot be passed. */
  readonly pass?: readonly RunReason[];
  /** What somebody reads at this step. */
  readonly measures?: readonly RunMeasure[];
  /** Settled by an answer rather than by a tap of "done". */
  readonly asks?: 'dry' | 'recipe' | 'verdict';
}

/** What any step that may be passed can be passed for. */
const usual: readonly RunReason[] = [
  'line-must-run',
  'none-here',
  'tool-missing',
  'cannot-reach',
  'asked-lead',
  'already-done',
];

/** The steps of a run: what each needs before it. One row a step; no other code knows an order. */
export const stepRules: Readonly<Record<RunStep, StepRule>> = {
  cause: { group: 'prepare', needs: [], pass: usual },
  gather: { group: 'prepare', needs: [], pass: usual },
  stop: { group: 'lock', needs: [] },
  'lock-out': { group: 'lock', needs: ['stop'], own: true },
  release: { group: 'lock', needs: ['lock-out'], measures: ['take-up-before'] },
  site: { group: 'site', needs: ['lock-out'], pass: usual },
  'outlet-live': { group: 'site', needs: ['lock-out'], pass: usual, measures: ['mains', 'air'] },
  dry: { group: 'site', needs: [], asks: 'dry' },
  cut: { group: 'table', needs: ['cause', 'gather', 'release', 'dry'], measures: ['square-length'] },
  punch: { group: 'table', needs: ['cut'], measures: ['tip-to-tip'] },
  mark: { group: 'table', needs: ['cut'], pass: usual, measures: ['marks-before'] },
  thread: { group: 'line', needs: ['release', 'punch', 'mark'] },
  mesh: { group: 'line', needs: ['thread', 'site'] },
  stack: { group: 'line', needs: ['mesh'] },
  close: { group: 'line', needs: ['stack'] },
  match: { group: 'match', needs: ['outlet-live', 'close'], own: true, asks: 'recipe' },
  'alarm-tried': { group: 'heat', needs: [], pass: usual },
  pressure: { group: 'heat', needs: ['close'], pass: ['display-broken', 'asked-lead'], measures: ['gauge-pressure'] },
  heat: { group: 'heat', needs: ['match', 'pressure', 'close', 'alarm-tried'] },
  open: { group: 'open', needs: ['heat'], own: true },
  'lift-out': { group: 'splice', needs: ['open'] },
  trim: { group: 'splice', needs: ['lift-out'], pass: usual },
  flat: { group: 'splice', needs: ['lift-out'], pass: ['line-must-run', 'no-time', 'asked-lead'] },
  faces: { group: 'splice', needs: ['lift-out'], pass: ['too-dark', 'line-must-run', 'asked-lead'] },
  straight: { group: 'splice', needs: ['flat'], pass: usual, measures: ['bow'] },
  bend: { group: 'splice', needs: ['flat', 'trim'], pass: usual },
  resistance: { group: 'splice', needs: ['lift-out'], pass: usual, measures: ['resistance'] },
  verdict: { group: 'splice', needs: ['faces', 'straight', 'bend', 'resistance'], asks: 'verdict' },
  'tension-three-quarters': { group: 'restart', needs: ['verdict'] },
  'tools-counted': { group: 'restart', needs: ['verdict'] },
  'guards-on': { group: 'restart', needs: ['tension-three-quarters', 'tools-counted'] },
  'people-clear': { group: 'restart', needs: ['guards-on'] },
  'lock-off': { group: 'restart', needs: ['people-clear'], own: true },
  jog: { group: 'jog', needs: ['lock-off'], pass: ['cannot-reach', 'not-needed-here', 'asked-lead'] },
  'lock-on': { group: 'jog', needs: ['jog'] },
  'final-tension': { group: 'jog', needs: ['lock-on'], measures: ['marks-after', 'take-up-after'] },
  unlock: { group: 'unlock', needs: ['final-tension'], own: true },
  track: { group: 'watch', needs: ['unlock'], pass: usual },
  watch: { group: 'watch', needs: ['track'], pass: usual },
  'retension-date': { group: 'watch', needs: ['final-tension'], pass: usual },
  remainder: { group: 'watch', needs: ['cut'], pass: usual, measures: ['roll-left'] },
};

/**
 * The steps of a run of a group, in the order of the work.
 *
 * @param group - of steps
 * @param steps - those that the run has
 */
export function stepsOf(group: RunGroup, steps: readonly RunStep[] = runSteps): readonly RunStep[] {
  return steps.filter((step) => stepRules[step].group === group);
}
