/** Where a number comes from; shown beside it everywhere. */
export const sources = ['data sheet', 'measured', 'person', 'example', 'computed'] as const;
export type Source = (typeof sources)[number];

/** The source of one field of a thing. */
export function sourceOf(
  thing: { readonly source: Source; readonly sources?: Readonly<Record<string, Source>> | undefined },
  field: string,
): Source {
  return thing.sources?.[field] ?? thing.source;
}
