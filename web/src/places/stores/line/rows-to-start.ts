import { Refusal } from '@loopwright/engine/refusal';
import { type Plant, type Pulley, surveyPulleys } from '@loopwright/plant';
import { type Entries, keptEntries, shownText, type Writer } from '../../../form/entries.ts';
import { formFields } from '../../../form/form-field.ts';
import { freePulleyId, type KnownGeometry, newRow, type PulleyRow } from './geometry.ts';
import type { GeometryReading } from './read-geometry.ts';

/** The first rows of the table of pulleys: those that the survey found, else two empty ones. */
export function rowsToStart(
  plant: Plant,
  { line }: KnownGeometry,
  { survey }: GeometryReading,
  writer: Writer,
): readonly PulleyRow[] {
  const found = survey === undefined ? [] : pulleysOf(survey);
  const wanted = found.length > 1 ? found.map((pulley) => typedEntries(pulley, writer)) : [{}, {}];
  const rows: PulleyRow[] = [];
  for (const entries of wanted) {
    const id = freePulleyId(plant, line.id, rows);
    const row = newRow(id, line.id, {}, writer.units);
    rows.push({ key: id, entries: { ...row.entries, ...entries, id: { text: id }, line: { text: line.id } } });
  }
  return rows;
}

function pulleysOf(survey: NonNullable<GeometryReading['survey']>): readonly Pulley[] {
  try {
    return surveyPulleys(survey);
  } catch (problem) {
    if (problem instanceof Refusal) return [];
    throw problem;
  }
}

/** The numbers of a pulley as if somebody had typed them. */
function typedEntries(pulley: Pulley, writer: Writer): Entries {
  const fields = formFields('pulleys');
  const kept = keptEntries('pulleys', fields, pulley, writer.units);
  return Object.fromEntries(
    fields.map((field) => {
      const { kept: _, ...entry } = kept[field.key] ?? { text: '' };
      return [field.key, { ...entry, text: shownText(field, { ...entry, kept: true, text: '' }, pulley, writer) }];
    }),
  );
}
