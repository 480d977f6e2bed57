/** A result as JSON can hold it: a number that does not exist becomes null, typed arrays become lists. */
export function plainResult(value: unknown): unknown {
  if (typeof value === 'number') return Number.isFinite(value) ? value : null;
  if (ArrayBuffer.isView(value)) return Array.from(value as unknown as ArrayLike<number>, plainResult);
  if (Array.isArray(value)) return value.map(plainResult);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, each]) => each !== undefined)
      .map(([key, each]) => [key, plainResult(each)]),
  );
}
