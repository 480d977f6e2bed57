import { folderLimits } from './limits.ts';
import type { FolderProblem } from './problem.ts';

/** A wrong column in a long file would drown everything else: the first ones are listed, the rest counted. */
export function capped(problems: readonly FolderProblem[]): FolderProblem[] {
  const counts = new Map<string, number>();
  const kept = problems.filter(({ file }) => {
    const count = (counts.get(file) ?? 0) + 1;
    counts.set(file, count);
    return count <= folderLimits.problems;
  });
  const more = [...counts].filter(([, count]) => count > folderLimits.problems);
  return [
    ...kept,
    ...more.map(([file, count]) => {
      const data = { value: count - folderLimits.problems };
      return { file, level: 'error' as const, code: 'more-problems' as const, data };
    }),
  ];
}
