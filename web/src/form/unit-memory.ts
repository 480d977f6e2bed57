import type { Kind } from '@loopwright/plant';
import type { UnitSystem } from '@loopwright/words';

const key = 'loopwright.units';

// Remembers where the browser forbids storage, until the page is closed.
const chosen = new Map<string, string>();

const nameOf = (kind: Kind, field: string, system: UnitSystem) => `${system} ${kind} ${field}`;

/** The unit last chosen on this device for a field, by readers of this system of units. */
export function rememberedUnit(kind: Kind, field: string, system: UnitSystem): string | undefined {
  const name = nameOf(kind, field, system);
  return chosen.get(name) ?? stored()[name];
}

/** Keeps the choice of a unit for a field. */
export function rememberUnit(kind: Kind, field: string, system: UnitSystem, unit: string): void {
  const name = nameOf(kind, field, system);
  chosen.set(name, unit);
  try {
    localStorage.setItem(key, JSON.stringify({ ...stored(), [name]: unit }));
  } catch {
    return;
  }
}

function stored(): Readonly<Record<string, string>> {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    if (typeof read !== 'object' || read === null) return {};
    return Object.fromEntries(Object.entries(read).filter(([, unit]) => typeof unit === 'string'));
  } catch {
    return {};
  }
}
