import { statesDe } from './messages/states/de.ts';
import { statesEn } from './messages/states/en.ts';
import { statesEs } from './messages/states/es.ts';

type StateName = keyof typeof statesEn extends infer Key ? (Key extends `state.${infer Name}` ? Name : never) : never;

/**
 * What people call a state of a position, in every language at once: people in one plant say the same thing in several.
 *
 * @param state - of a position
 */
export function stateWords(state: StateName): readonly string[] {
  return [statesEn, statesDe, statesEs].flatMap((words) => [words[`state.${state}`], words[`app.find.${state}`]]);
}
