import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { readArchive, verifyArchive, writeArchive } from '../../src/archive/index.ts';
import { type AnyEvent, foldAndReport } from '../../src/index.ts';
import {
  commitment,
  erasePerson,
  notePerson,
  type PersonKeeping,
  type PersonRow,
  type PersonStore,
  personErased,
  personNoted,
  personsIn,
  readPerson,
  webPersonCrypto,
} from '../../src/person/index.ts';
import { exportOf, happening, plantId, sampleLog, verify } from '../log/sample-log.ts';
import { alone } from '../verifier/both-verifiers.ts';

/** Rows as a disk would hold them. */
class Rows implements PersonStore {
  readonly rows = new Map<string, PersonRow>();
  readonly #name = (plant: string, alias: string) => `${plant}/${alias}`;
  get = async (plant: string, alias: string) => this.rows.get(this.#name(plant, alias));
  put = async (row: PersonRow) => void this.rows.set(this.#name(row.plant, row.alias), row);
  destroy = async (plant: string, alias: string) => void this.rows.delete(this.#name(plant, alias));
}

const keepingIn = (store: Rows): PersonKeeping => ({
  plant: plantId,
  store,
  crypto: webPersonCrypto(globalThis.crypto),
});
const name = 'Imaginary Person the Second';
const note = 'needs the low step at press 2';

async function twoTexts(store: Rows) {
  const keeping = keepingIn(store);
  const { alias, event } = await notePerson(keeping, name);
  const second = await notePerson(keeping, note, alias);
  return { keeping, alias, events: [event, second.event] as readonly AnyEvent[] };
}

const exported = async (events: readonly AnyEvent[]) =>
  writeArchive(
    await exportOf([await sampleLog(events.length, { change: (n) => happening(n, events[n] ?? {}) })]),
    {},
    '2026-11-25T02:00:00.000Z',
  );

describe('persons', () => {
  it('[PERSON-01] the log holds alias and commitment, SHA-256(salt ‖ text), and nothing else of a person', async () => {
    const store = new Rows();
    const { alias, events } = await twoTexts(store);
    const [row] = [...store.rows.values()];
    const [first] = row?.texts ?? [];
    const expected = createHash('sha256')
      .update(first?.salt ?? '')
      .update(name)
      .digest('hex');
    expect(events[0]).toEqual({ type: 'person.noted', body: { schema: 1, thing: { alias, commitment: expected } } });
    expect([alias.length, first?.salt.length, row?.key.length]).toEqual([32, 32, 32]);
    const bytes = Buffer.from(readArchive(await exported(events)).log);
    for (const secret of [name, note, row?.key, ...(row?.texts.flatMap(({ salt, sealed }) => [salt, sealed]) ?? [])])
      for (const form of ['utf8', 'hex', 'base64'] as const)
        expect(bytes.includes(Buffer.from(secret ?? '').toString(form))).toBe(false);
  });

  it('[PERSON-02] texts are read back where log and store agree; a row that was moved or changed does not open', async () => {
    const store = new Rows();
    const { keeping, alias, events } = await twoTexts(store);
    const log = personsIn(events);
    expect(await readPerson(keeping, alias, log)).toEqual({ is: 'known', texts: [name, note] });
    expect(await readPerson(keeping, alias, personsIn(events.slice(0, 1)))).toEqual({ is: 'known', texts: [name] });
    expect(await readPerson(keeping, 'nobody', log)).toEqual({ is: 'not-here' });
    const row = (await store.get(plantId, alias)) as PersonRow;
    const [first, second] = row.texts;
    if (first === undefined || second === undefined) throw new Error('no texts');
    const changed = [
      { ...first, sealed: first.sealed.with(0, (first.sealed[0] ?? 0) ^ 1) },
      { ...first, salt: first.salt.with(0, (first.salt[0] ?? 0) ^ 1) },
      { ...first, sealed: second.sealed, nonce: second.nonce },
    ];
    for (const each of changed) {
      await store.put({ ...row, texts: [each] });
      expect(await readPerson(keeping, alias, log)).toEqual({ is: 'not-here' });
    }
    await expect(notePerson(keeping, '  ')).rejects.toMatchObject({ code: 'empty' });
  });

  it('[PERSON-03] a name cannot be found by trying names against the commitment; with the salt it can, so the salt goes too', async () => {
    const store = new Rows();
    const { alias, events } = await twoTexts(store);
    const names = Array.from({ length: 5000 }, (_, i) => `Imaginary Person ${i}`).concat(name);
    const [committed = ''] = personsIn(events).commitments.get(alias) ?? [];
    const bare = (text: string) => createHash('sha256').update(text).digest('hex');
    const { salt } = (await store.get(plantId, alias))?.texts[0] ?? { salt: new Uint8Array() };
    const guesses = (hash: (text: string) => string) => names.filter((each) => hash(each) === committed);
    expect(guesses(bare)).toEqual([]);
    expect(guesses((text) => commitment(new Uint8Array(32), text))).toEqual([]);
    expect(guesses((text) => commitment(salt, text))).toEqual([name]);
  });

  it('[PERSON-04] erased: nothing is left to open anything with, the log says so, and its chain still holds', async () => {
    const store = new Rows();
    const { keeping, alias, events } = await twoTexts(store);
    const before = structuredClone(await store.get(plantId, alias));
    const erased = await erasePerson(keeping, alias);
    expect(erased).toEqual({ type: 'person.erased', body: { schema: 1, thing: { alias } } });
    expect([...store.rows]).toEqual([]);
    const all = [...events, erased];
    expect(await readPerson(keeping, alias, personsIn(all))).toEqual({ is: 'erased' });
    const file = await exported(all);
    expect((await verifyArchive(readArchive(file), verify)).failure).toBeUndefined();
    expect((await alone(file)).verdict).toBe('ok');
    const bytes = Buffer.from(readArchive(file).log);
    const secrets = [before?.key, ...(before?.texts.flatMap(({ salt, nonce, sealed }) => [salt, nonce, sealed]) ?? [])];
    for (const secret of [...secrets, Buffer.from(name), Buffer.from(note)])
      for (const form of ['latin1', 'hex', 'base64'] as const)
        expect(bytes.includes(Buffer.from(secret ?? []).toString(form))).toBe(false);
  });

  it('[PERSON-04] a row that came back from somewhere after the erasure stays closed to the page', async () => {
    const store = new Rows();
    const { keeping, alias, events } = await twoTexts(store);
    const row = (await store.get(plantId, alias)) as PersonRow;
    const erased = await erasePerson(keeping, alias);
    await store.put(row);
    const late = personNoted(alias, 'f'.repeat(64));
    expect(await readPerson(keeping, alias, personsIn([...events, erased, late]))).toEqual({ is: 'erased' });
  });

  it('[PERSON-05] what events say of persons is taken from their form alone; the fold of the plant passes them over', () => {
    const odd = [null, 7, {}, { schema: 2, thing: { alias: 'a' } }, { schema: 1 }, { schema: 1, thing: { alias: 7 } }];
    const events: readonly AnyEvent[] = [
      ...odd.flatMap((body) => [
        { type: 'person.noted', body },
        { type: 'person.erased', body },
      ]),
      { type: 'person.noted', body: { schema: 1, thing: { alias: 'a', commitment: 'x' } } },
      personErased('b'),
    ];
    const { commitments, erased } = personsIn(events);
    expect([commitments.size, [...erased]]).toEqual([0, ['b']]);
    const { unknownTypes, refused } = foldAndReport([personNoted('b', 'a'.repeat(64)), personErased('b')]);
    expect([unknownTypes.size, refused]).toEqual([0, []]);
  });
});
