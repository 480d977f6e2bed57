/** `['pulleys', 3, 'x_m']` as people read it: `pulleys[3].x_m`. */
export function fieldPath(keys: readonly PropertyKey[]): string {
  return keys.reduce<string>(
    (path, key) => (typeof key === 'number' ? `${path}[${key}]` : path === '' ? String(key) : `${path}.${String(key)}`),
    '',
  );
}

/** The value at a path of a plain object, or undefined. */
export function valueAt(input: unknown, keys: readonly PropertyKey[]): unknown {
  return keys.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === 'object' && Object.hasOwn(value, key)
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    input,
  );
}
