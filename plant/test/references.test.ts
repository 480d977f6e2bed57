import { describe, expect, it } from 'vitest';
import { byId, emptyPlant, kinds } from '../src/empty-plant.ts';
import { thingSchemas } from '../src/plant.ts';
import { definitionsOf } from '../src/plant-definition.ts';
import { danglingReferences, references } from '../src/references.ts';
import { readWith } from './sample-folder.ts';

describe('references between things', () => {
  it('[PLANT-70] every reference is a field of its kind, and every such field is in the table', () => {
    const known = ['belt', 'die', 'press', 'line'];
    const fields = kinds.flatMap((kind) =>
      Object.keys(thingSchemas[kind].shape).flatMap((field) => (known.includes(field) ? [`${kind}.${field}`] : [])),
    );
    expect(references.map(({ kind, field }) => `${kind}.${field}`).sort()).toEqual(fields.sort());
  });

  it('[PLANT-71] a missing thing is told once for every thing that refers to it', () => {
    const { plant } = readWith();
    if (!plant) throw new Error('the sample has mistakes');
    expect(danglingReferences(plant)).toEqual([]);
    expect(danglingReferences({ ...plant, belts: byId([]) })).toEqual([
      { kind: 'recipes', field: 'belt', to: 'belts', id: 'reed-north', missing: 'Reed-20' },
      { kind: 'lines', field: 'belt', to: 'belts', id: 'L1', missing: 'Reed-20' },
      { kind: 'rolls', field: 'belt', to: 'belts', id: 'roll-1', missing: 'Reed-20' },
    ]);
  });

  it('[PLANT-72] the definitions of a plant name everything in it once', () => {
    const { plant, definitions } = readWith();
    if (!plant) throw new Error('the sample has mistakes');
    expect(definitionsOf(plant)).toEqual(definitions);
    expect(definitionsOf(emptyPlant('p', 'P'))).toEqual([{ kind: 'plant', thing: { id: 'p', name: 'P' } }]);
  });

  it('[PLANT-73] the kinds are those of the schemas, in their order', () => {
    expect(kinds).toEqual(Object.keys(thingSchemas));
  });
});
