/** That a witness saw a log at a size. */
export interface Sighting {
  readonly device: string;
  readonly size: number;
  readonly witness: string;
}

/** How far a log was seen by others. */
export interface Seen {
  /** How many of its first events at least one other device has seen; the events after them rest on one device only. */
  readonly size: number;
  /** How many other devices have seen an event; 0 means "on this device only". */
  readonly by: (seq: number) => number;
}

/**
 * How many other devices bear witness to each event of a log. A witness of a size bears witness to every event before
 * it; the same witness twice counts once, and a device is none of its own.
 *
 * @param sightings - sound statements, of any logs
 * @param device - whose log it is
 */
export function seenOf(sightings: Iterable<Sighting>, device: string): Seen {
  const reach = new Map<string, number>();
  for (const { device: of, size, witness } of sightings)
    if (of === device && witness !== device) reach.set(witness, Math.max(reach.get(witness) ?? 0, size));
  const sizes = [...reach.values()];
  return { size: Math.max(0, ...sizes), by: (seq) => sizes.filter((size) => size > seq).length };
}
