/** Each value that stands in the parsed input but not in the given one, by path: the defaults that were taken. */
export function defaultsUsed(given: unknown, parsed: unknown, path = ''): Record<string, unknown> {
  if (Array.isArray(parsed))
    return Object.assign(
      {},
      ...parsed.map((item, i) => defaultsUsed(Array.isArray(given) ? given[i] : undefined, item, `${path}[${i}]`)),
    );
  if (parsed === null || typeof parsed !== 'object') return {};
  const before = given !== null && typeof given === 'object' ? (given as Record<string, unknown>) : {};
  return Object.entries(parsed).reduce<Record<string, unknown>>((used, [key, value]) => {
    const here = path === '' ? key : `${path}.${key}`;
    if (before[key] === undefined) used[here] = value;
    else Object.assign(used, defaultsUsed(before[key], value, here));
    return used;
  }, {});
}
