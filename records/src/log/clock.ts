const utc = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?Z$/;

/** Whether a text is a moment in UTC that exists. */
export function isUtc(text: unknown): text is string {
  return typeof text === 'string' && utc.test(text) && Number.isFinite(Date.parse(text));
}

/**
 * Whether the wall clock of a device ran backwards from one event to the next. Order never rests on it; it is said,
 * because a record's time of day is worth less then.
 *
 * @param before - wall clock of the event before, if there is one
 * @param at - wall clock of the event
 */
export function clockWentBack(before: string | undefined, at: unknown): boolean {
  return isUtc(before) && isUtc(at) && Date.parse(at) < Date.parse(before);
}
