/** Items of a page with keys for the renderer. A page is made anew as a whole, so an item's place is its identity. */
export function keyed<T>(items: readonly T[]): readonly { readonly key: string; readonly item: T }[] {
  return items.map((item, at) => ({ key: `${at}`, item }));
}
