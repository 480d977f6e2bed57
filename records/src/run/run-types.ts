/** What can happen in a press run. Published: a name keeps its meaning for ever. */
export const runTypes = [
  'run.started',
  'run.predicted',
  'run.people-said',
  'run.steps-done',
  'run.step-passed',
  'run.dry-said',
  'run.recipe-compared',
  'run.roll-changed',
  'run.measured',
  'run.display-read',
  'run.display-said',
  'run.curve-read',
  'run.cycle-stopped',
  'run.opened-early',
  'run.photo-taken',
  'run.no-photo',
  'run.inspected',
  'run.noted',
  'run.deviation-accepted',
  'run.handed-over',
  'run.taken-back',
  'run.alarm-heard',
  'run.stopped',
] as const;
export type RunType = (typeof runTypes)[number];

const names: ReadonlySet<string> = new Set(runTypes);

/** Whether an event type belongs to a press run. It changes nothing in the plant. */
export function isRunType(type: string): type is RunType {
  return names.has(type);
}

/**
 * Which run an event is about; undefined for events about none.
 *
 * @param event - any
 */
export function runOf({ type, body }: { readonly type: string; readonly body: unknown }): string | undefined {
  if (!isRunType(type) || typeof body !== 'object' || body === null || !('thing' in body)) return undefined;
  const { thing } = body;
  if (typeof thing !== 'object' || thing === null || !('run' in thing)) return undefined;
  return typeof thing.run === 'string' ? thing.run : undefined;
}
