const furthestEast_ms = 14 * 3_600_000;

/**
 * Whether a calendar day has come nowhere on earth yet.
 *
 * @param day - `2026-03-02`
 * @param now - the moment, in UTC
 */
export function isAhead(day: string, now: string): boolean {
  return day > new Date(Date.parse(now) + furthestEast_ms).toISOString().slice(0, 10);
}
