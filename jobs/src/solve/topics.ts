import type { Topic } from './topic.ts';
import { cutLengthTopic } from './topics/cut-length.ts';
import { edgeSliversTopic } from './topics/edge-slivers.ts';
import { pathTopic } from './topics/path.ts';
import { pressUpTopic } from './topics/press-up.ts';
import { spliceStrengthTopic } from './topics/splice-strength.ts';
import { tensileSampleTopic } from './topics/tensile-sample.ts';
import { tensionByMarksTopic } from './topics/tension-by-marks.ts';
import { tensionByPushTopic } from './topics/tension-by-push.ts';
import { tensionBySoundTopic } from './topics/tension-by-sound.ts';
import { tensionRoundLoopTopic } from './topics/tension-round-loop.ts';

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
];

/** The row of a topic, or undefined for a name this version does not know. */
export function topicOf(id: string): Topic | undefined {
  return topics.find((topic) => topic.id === id);
}
