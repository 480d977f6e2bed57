import type { Plant, Position } from '@loopwright/plant';

/** What stands on the label of a position. */
export interface PositionLabel {
  readonly position: string;
  readonly line: string;
  readonly lineName: string;
  /** What people call the place, when somebody wrote it down. */
  readonly place?: string;
  readonly belt: string;
  readonly width_m: number;
  readonly plant: { readonly id: string; readonly name: string };
}

/** Which positions get a label: those named and those of the lines named; with neither all of them. */
export interface LabelChoice {
  readonly lines?: readonly string[];
  readonly positions?: readonly string[];
}

/**
 * The labels of a plant's positions, line by line, in the order in which one walks along: by the number on the line.
 * Names that the plant does not know are left out.
 *
 * @param plant - the plant's state
 * @param choice - which positions; without one all of them
 */
export function positionLabels(plant: Plant, choice: LabelChoice = {}): readonly PositionLabel[] {
  return chosen(plant, choice)
    .toSorted((a, b) => compared(a.line, b.line) || a.number - b.number || compared(a.id, b.id))
    .flatMap((position) => labelOf(plant, position));
}

function chosen(plant: Plant, { lines, positions }: LabelChoice): Position[] {
  const all = Object.values(plant.positions);
  if (positions === undefined && lines === undefined) return all;
  const [wantedPositions, wantedLines] = [new Set(positions), new Set(lines)];
  return all.filter(({ id, line }) => wantedPositions.has(id) || wantedLines.has(line));
}

function compared(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

function labelOf(plant: Plant, { id, line: lineId, name }: Position): PositionLabel[] {
  const line = Object.hasOwn(plant.lines, lineId) ? plant.lines[lineId] : undefined;
  if (line === undefined) return [];
  return [
    {
      position: id,
      line: line.id,
      lineName: line.name,
      ...(name === undefined || name === '' ? {} : { place: name }),
      belt: line.belt,
      width_m: line.width_m,
      plant: { id: plant.id, name: plant.name },
    },
  ];
}
