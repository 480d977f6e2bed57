/**
 * Things by the line they belong to, each line's in the order given.
 *
 * @param things - of any kind that names its line
 */
export function byLine<T extends { readonly line: string }>(things: readonly T[]): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const group = groups.get(thing.line);
    if (group) group.push(thing);
    else groups.set(thing.line, [thing]);
  }
  return groups;
}
