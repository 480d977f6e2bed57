import type { LineSummary, LinesOverview, PositionSummary } from '@loopwright/jobs';
import { diesFor, type Line, type Plant } from '@loopwright/plant';
import { stateWords } from '@loopwright/words';
import type { Searchable } from './search-positions.ts';

/** A position with its line and its die, and the words it answers to. */
export interface FoundPosition extends Searchable {
  readonly summary: PositionSummary;
  readonly line: Line;
  readonly die: string | undefined;
}

/** All positions of the plant, ready to be searched; the torn ones first, for they are looked for. */
export function searchable(plant: Plant, overview: LinesOverview): readonly FoundPosition[] {
  const all = overview.lines.flatMap((group) => positionsOf(plant, group));
  const later = ({ summary }: FoundPosition) => (summary.state === 'torn' ? 0 : 1);
  return all.toSorted((a, b) => later(a) - later(b));
}

function positionsOf(plant: Plant, { line, belt, positions }: LineSummary): readonly FoundPosition[] {
  const die = belt === undefined ? undefined : diesFor(plant, belt, line.width_m)[0]?.id;
  return positions.map((summary) => ({
    id: summary.position.id,
    line,
    die,
    summary,
    words: [line.name, summary.position.name ?? '', line.belt, die ?? '', ...stateWords(summary.state)],
  }));
}
