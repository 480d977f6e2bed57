import type { Topic } from './topic.ts';
import { canonicalTopic } from './topics/canonical.ts';
import { consistencyTopic } from './topics/consistency.ts';
import { cutLengthTopic } from './topics/cut-length.ts';
import { cycleTopic } from './topics/cycle.ts';
import { cycleMapTopic } from './topics/cycle-map.ts';
import { edgeSliversTopic } from './topics/edge-slivers.ts';
import { fusionTopic } from './topics/fusion.ts';
import { inclusionTopic } from './topics/inclusion.ts';
import { logTopic } from './topics/log.ts';
import { pathTopic } from './topics/path.ts';
import { pressUpTopic } from './topics/press-up.ts';
import { pressureTopic } from './topics/pressure.ts';
import { spliceStrengthTopic } from './topics/splice-strength.ts';
import { supplyTopic } from './topics/supply.ts';
import { tensileSampleTopic } from './topics/tensile-sample.ts';
import { tensionByMarksTopic } from './topics/tension-by-marks.ts';
import { tensionByPushTopic } from './topics/tension-by-push.ts';
import { tensionBySoundTopic } from './topics/tension-by-sound.ts';
import { tensionRoundLoopTopic } from './topics/tension-round-loop.ts';
import { twoLogsTopic } from './topics/two-logs.ts';

/** Every question that can be asked from outside: the one table that terminal, server and tests walk. */
export const topics: readonly Topic[] = [
  pathTopic,
  cutLengthTopic,
  tensionRoundLoopTopic,
  tensionBySoundTopic,
  tensionByPushTopic,
  tensionByMarksTopic,
  edgeSliversTopic,
  spliceStrengthTopic,
  tensileSampleTopic,
  pressUpTopic,
  supplyTopic,
  pressureTopic,
  fusionTopic,
  cycleTopic,
  cycleMapTopic,
  canonicalTopic,
  logTopic,
  twoLogsTopic,
  inclusionTopic,
  consistencyTopic,
];

/** The row of a topic, or undefined for a name this version does not know. */
export function topicOf(id: string): Topic | undefined {
  return topics.find((topic) => topic.id === id);
}
