/** Address of the place where labels of all positions are printed. */
export const labelsAddress = '/labels';

/** Address at which the positions of one line are chosen. */
export function lineLabelsAddress(line: string): string {
  return `${labelsAddress}/line/${encodeURIComponent(line)}`;
}

/** Address at which one position is chosen. */
export function positionLabelAddress(position: string): string {
  return `${labelsAddress}/position/${encodeURIComponent(position)}`;
}

export function isLabelsAddress(path: string): boolean {
  return path === labelsAddress || path.startsWith(`${labelsAddress}/`);
}

/** What an address chooses: a line, a position, or everything. */
export interface AddressChoice {
  readonly line?: string;
  readonly position?: string;
}

export function choiceIn(path: string): AddressChoice {
  const [, kind, id] = path.split('/').filter(Boolean).map(decoded);
  if (id === undefined) return {};
  if (kind === 'line') return { line: id };
  return kind === 'position' ? { position: id } : {};
}

// A stranger's address may not be decodable at all.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
