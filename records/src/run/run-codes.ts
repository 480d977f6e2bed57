/** Alias under which events are written while nobody has said who works. */
export const nobody = 'no-badge';

/** Steps of a press run in the order of the work. What may be done in another order says `jobs`. */
export const runSteps = [
  'cause',
  'gather',
  'stop',
  'lock-out',
  'release',
  'site',
  'outlet-live',
  'dry',
  'cut',
  'punch',
  'mark',
  'thread',
  'mesh',
  'stack',
  'close',
  'match',
  'alarm-tried',
  'pressure',
  'heat',
  'open',
  'lift-out',
  'trim',
  'flat',
  'faces',
  'straight',
  'bend',
  'resistance',
  'verdict',
  'tension-three-quarters',
  'tools-counted',
  'guards-on',
  'people-clear',
  'lock-off',
  'jog',
  'lock-on',
  'final-tension',
  'unlock',
  'track',
  'watch',
  'retension-date',
  'remainder',
] as const;
export type RunStep = (typeof runSteps)[number];

/** Why somebody goes on otherwise than the card says: tiles, so that nobody types in gloves. */
export const runReasons = [
  'line-must-run',
  'none-here',
  'asked-lead',
  'maker-says',
  'tool-missing',
  'cannot-reach',
  'display-broken',
  'no-camera',
  'too-dark',
  'already-done',
  'not-needed-here',
  'no-time',
] as const;
export type RunReason = (typeof runReasons)[number];

/** What a person reads off a tape, gauge, meter or display in a run. */
export const runMeasures = [
  'take-up-before',
  'square-length',
  'tip-to-tip',
  'marks-before',
  'marks-after',
  'mains',
  'air',
  'gauge-pressure',
  'bow',
  'edge-step',
  'thickness-step',
  'resistance',
  'take-up-after',
  'roll-left',
] as const;
export type RunMeasure = (typeof runMeasures)[number];

/** How dry the belt is, as far as somebody knows. */
export const dryAnswers = ['sealed-roll', 'dried', 'not-dry', 'not-known'] as const;
export type DryAnswer = (typeof dryAnswers)[number];

/** What the press display shows against the card. */
export const recipeAnswers = ['same', 'set-to-card', 'differs', 'not-readable'] as const;
export type RecipeAnswer = (typeof recipeAnswers)[number];

/** What the press display says of the cycle, whatever the phone has computed. */
export const displayWords = ['hold-began', 'cooling-began', 'cool'] as const;
export type DisplayWord = (typeof displayWords)[number];

/** What is done with the splice after looking at it. */
export const verdicts = ['run', 'press-again', 'cut-out'] as const;
export type RunVerdict = (typeof verdicts)[number];

/** Marks of a cycle at which somebody reads both displays. */
export const readingMarks = ['heating', 'hold', 'cooling', 'opening'] as const;
export type ReadingMark = (typeof readingMarks)[number];

/** The two faces of a belt. */
export const runFaces = ['roller', 'pulley'] as const;
export type RunFace = (typeof runFaces)[number];

/** What keeps runs apart at a glance: a shape, a word and a place on the screen. */
export const runSigns = [
  { shape: 'square', word: 'bell' },
  { shape: 'circle', word: 'wheel' },
  { shape: 'triangle', word: 'tent' },
  { shape: 'diamond', word: 'kite' },
  { shape: 'hexagon', word: 'nut' },
  { shape: 'star', word: 'lamp' },
] as const;
export type RunSign = (typeof runSigns)[number];
