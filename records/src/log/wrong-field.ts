/**
 * The first field that keeps a value from being a thing of version 1, by the order of names: one that is missing or one
 * too many; `v` where all are there and the version is another.
 *
 * @param value - anything
 * @param names - of the fields, sorted
 * @returns undefined where fields and version are right; an empty name for what has no fields at all
 */
export function wrongField(value: unknown, names: readonly string[]): string | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return '';
  const given = Object.keys(value).sort();
  for (let i = 0; i < Math.max(given.length, names.length); i++) {
    const [has, needs] = [given[i], names[i]];
    if (has === needs) continue;
    return [has, needs].filter((name) => name !== undefined).sort()[0];
  }
  return (value as { readonly v: unknown }).v === 1 ? undefined : 'v';
}

/** Whether a value has exactly the given fields, sorted, and version 1. */
export function hasFields(value: unknown, names: readonly string[]): value is Readonly<Record<string, unknown>> {
  return wrongField(value, names) === undefined;
}

/** A field as part of a failure; nothing for what has no fields. */
export function namedField(field: string | undefined): { readonly field?: string } {
  return field === undefined || field === '' ? {} : { field };
}
