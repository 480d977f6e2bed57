import { openStore } from '../../web/src/store/open-store.ts';
import type { Change } from '../../web/src/store/plant-store.ts';

/** Events in one transaction. */
const batch_events = 1000;

interface Size {
  readonly lines: number;
  readonly positionsPerLine: number;
  readonly events: number;
}

interface Defined extends Change {
  readonly body: { readonly schema: 1; readonly thing: { readonly id: string; readonly line?: string } };
}

/**
 * Fills the store of this address with a plant of many positions and a long history, through the same store that the app
 * writes with: every event is signed and chained. Lines are copies of the first one that the server knows.
 *
 * @param onEvents - told now and then how many events there are
 */
async function fill({ lines, positionsPerLine, events }: Size, onEvents: (count: number) => void): Promise<number> {
  const store = await openStore({ reserve_bytes: 0 });
  await store.startPlant('Many positions');
  for (const changes of batches(await changesOf(lines, positionsPerLine, events))) {
    const { size } = await store.append(changes);
    onEvents(size);
  }
  const { size } = store.current();
  store.close();
  return size;
}

async function changesOf(lines: number, positionsPerLine: number, events: number): Promise<readonly Change[]> {
  const answer = (await (await fetch('/plant/events.json')).json()) as { readonly events: readonly Defined[] };
  const known = answer.events.filter(({ type }) => type !== 'plant.defined');
  const shared = known.filter(({ type }) => !/^(line|pulley|position|survey)\./.test(type));
  const model = known.find(({ type }) => type === 'line.defined');
  const modelPosition = known.find(({ type }) => type === 'position.defined');
  if (model === undefined || modelPosition === undefined) throw new Error('the plant of the server has no positions');
  const pulleys = known.filter(
    ({ type, body }) => type === 'pulley.defined' && body.thing.line === model.body.thing.id,
  );
  const ids = Array.from({ length: lines }, (_, i) => `L${String(i + 1).padStart(3, '0')}`);
  const copies = ids.flatMap((line) => [
    changed(model, { id: line, name: `Line ${line}` }),
    ...pulleys.map((pulley) => changed(pulley, { id: `${line}-${pulley.body.thing.id}`, line })),
  ]);
  const position = (i: number, more: object) => {
    const line = ids[Math.floor(i / positionsPerLine) % lines] ?? '';
    const number = (i % positionsPerLine) + 1;
    return changed(modelPosition, { id: `${line}-${number}`, line, number, ...more });
  };
  const count = lines * positionsPerLine;
  const first = Array.from({ length: count }, (_, i) => position(i, { status: i === 7 ? 'torn' : 'running' }));
  const before = shared.length + copies.length + first.length + 1;
  const history = Array.from({ length: Math.max(0, events - before) }, (_, i) =>
    position((i * 7919) % count, { lastTensionedOn: day(i), status: (i * 7919) % count === 7 ? 'torn' : 'running' }),
  );
  return [...shared, ...copies, ...first, ...history];
}

function changed({ type, body }: Defined, more: object): Change {
  return { type, body: { ...body, thing: { ...body.thing, ...more } } };
}

const day = (i: number) => new Date(Date.UTC(2025, 0, 1 + (i % 600))).toISOString().slice(0, 10);

function batches(changes: readonly Change[]): readonly (readonly Change[])[] {
  const count = Math.ceil(changes.length / batch_events);
  return Array.from({ length: count }, (_, i) => changes.slice(i * batch_events, (i + 1) * batch_events));
}

Object.assign(window, { fill });
