/** What this device kept when it was last looked at: held apart from the store, so that its loss does not go unseen. */
export interface KeptWitness {
  readonly name: string;
  readonly size: number;
}

const key = (store: string) => `${store}.kept`;

/** What was kept; undefined when nothing was, or where the browser forbids storage. */
export function readWitness(store: string): KeptWitness | undefined {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(key(store)) ?? 'null');
    return isWitness(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Notes what is kept now. */
export function writeWitness(store: string, { name, size }: KeptWitness): void {
  try {
    localStorage.setItem(key(store), JSON.stringify({ name, size }));
  } catch {
    return;
  }
}

function isWitness(value: unknown): value is KeptWitness {
  if (typeof value !== 'object' || value === null || !('name' in value) || !('size' in value)) return false;
  return typeof value.name === 'string' && typeof value.size === 'number' && value.size > 0;
}
