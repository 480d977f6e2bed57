import type { Kind } from '../plant.ts';
import { type Reference, references } from '../references.ts';
import { nearest } from './nearest.ts';
import type { FolderProblem } from './problem.ts';
import type { ReadFile } from './read-file.ts';

/**
 * References between files that lead nowhere. Ids count as there even when their own row has another mistake.
 *
 * @param read - what was read of each kind's file
 * @param from - looks only at what things of this kind refer to; default: all
 */
export function checkReferences(read: ReadonlyMap<Kind, ReadFile>, from?: Kind): FolderProblem[] {
  const asked = references.filter(({ kind }) => from === undefined || kind === from);
  const found = asked.flatMap((reference) => {
    const referring = read.get(reference.kind);
    const to = read.get(reference.to);
    return referring && to ? checkReference(reference, referring, to) : [];
  });
  const told = new Set<string>();
  return found.filter(({ code, file }) => {
    const again = code === 'file-missing' && told.has(file);
    if (code === 'file-missing') told.add(file);
    return !again;
  });
}

/** Comparing every broken name with every known one would take long in a long file. */
const guesses = 20;

function checkReference({ field }: Reference, from: ReadFile, to: ReadFile): FolderProblem[] {
  const known = new Set(to.rows.map(({ raw }) => raw['id']).filter((id) => typeof id === 'string'));
  const broken = from.rows.filter(({ raw }) => typeof raw[field] === 'string' && !known.has(raw[field]));
  if (broken.length === 0) return [];
  if (!to.there) return [{ file: to.file, level: 'error', code: 'file-missing', data: { other: from.file } }];
  // A file that could not be read at all has been reported; its ids are not known to be missing.
  if (to.rows.length === 0 && !to.complete) return [];
  return broken.map(({ row, raw }, i) => {
    const value = String(raw[field]);
    const close = i < guesses ? nearest(value, known) : undefined;
    const guess = close === undefined ? {} : { nearest: close };
    const heading = from.headings.get(field) ?? field;
    const data = { value, other: to.file, ...guess };
    return { file: from.file, row, field: heading, level: 'error', code: 'dangling-reference', data };
  });
}
