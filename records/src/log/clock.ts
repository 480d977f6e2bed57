const utc = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?Z$/;
const wholeSeconds = 19;

/** Whether a text is a moment in UTC that exists. */
export function isUtc(text: unknown): text is string {
  if (typeof text !== 'string' || !utc.test(text)) return false;
  const time_ms = Date.parse(text);
  // Engines differ on the 30th of February and on 24:00; what does not come back as it went in is no moment.
  return (
    Number.isFinite(time_ms) && new Date(time_ms).toISOString().slice(0, wholeSeconds) === text.slice(0, wholeSeconds)
  );
}

/**
 * Whether the wall clock of a device ran backwards from one event to the next, in whole milliseconds. Order never rests
 * on it; it is said, because a record's time of day is worth less then.
 *
 * @param before - wall clock of the event before, if there is one
 * @param at - wall clock of the event
 */
export function clockWentBack(before: unknown, at: unknown): boolean {
  return isUtc(before) && isUtc(at) && Date.parse(at) < Date.parse(before);
}
