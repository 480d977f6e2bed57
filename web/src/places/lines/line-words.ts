import type { LinesOverview, PositionOverview } from '@loopwright/jobs';
import { languages, type UnitSystem, voice } from '@loopwright/words';
import type { Searchable } from './search-positions.ts';

/** A position of the overview with the name of its line and the words it answers to. */
export interface FoundPosition extends Searchable {
  readonly overview: PositionOverview;
  readonly line: LinesOverview['lines'][number]['line'];
}

/** All positions of the plant, ready to be searched. */
export function searchable(overview: LinesOverview, units: UnitSystem): readonly FoundPosition[] {
  return overview.lines.flatMap(({ line, positions }) =>
    positions.map((position) => ({
      id: position.position.id,
      line,
      overview: position,
      words: [line.name, position.position.name ?? '', line.belt, position.die ?? '', ...stateWords(position, units)],
    })),
  );
}

// Every language at once: people in one plant say the same thing in several.
function stateWords({ state }: PositionOverview, units: UnitSystem): readonly string[] {
  return languages.flatMap((language) => {
    const { say } = voice(language, units);
    return [say(`state.${state}`), say(`app.find.${state}`)];
  });
}
