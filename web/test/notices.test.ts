import { voice } from '@loopwright/words';
import { expect, test } from 'vitest';
import { noticesOf } from '../src/store/notices.ts';
import type { StoreState } from '../src/store/plant-store.ts';
import { storeFaults } from '../src/store/store-error.ts';

const calm = {
  storage: {
    persisted: true,
    used_bytes: 1e6,
    quota_bytes: 1e10,
    nearlyFull: false,
    perhapsPrivate: false,
    reserve: 'there',
    secondCopy: 'kept',
    asksPerson: false,
  },
  device: { id: 'd', keyCanBeCopied: false, installation: 'installed', onlyHere: 3, clockJumped_s: undefined },
  broken: undefined,
  closed: undefined,
  unknownEvents: 0,
} as const;
const said = (change: object) => noticesOf({ ...calm, ...change } as unknown as StoreState);

test('[STORE-17] where all is well nothing is urgent, and the promise of the browser is shown', () => {
  expect(said({}).map(({ code, urgent }) => [code, urgent])).toEqual([
    ['persisted', false],
    ['copied', false],
  ]);
});

test('[STORE-17] each trouble is said, those that stop the writing first', () => {
  const storage = {
    ...calm.storage,
    persisted: false,
    nearlyFull: true,
    perhapsPrivate: true,
    reserve: 'used',
    secondCopy: 'none',
  };
  const device = { ...calm.device, installation: 'practice-only', clockJumped_s: -3600, keyCanBeCopied: true };
  const all = said({
    storage,
    device,
    broken: { device: 'd', verdict: 'broken-link', at: 4 },
    closed: 'newer',
    unknownEvents: 2,
    lost: { name: 'Mill', size: 9, backAgain: false },
  });
  expect(all.map(({ code }) => code)).toEqual([
    'lost',
    'broken',
    'newer',
    'reserve-used',
    'nearly-full',
    'private',
    'clock',
    'unknown-events',
    'practice-only',
    'not-persisted',
    'not-copied',
    'key-copyable',
  ]);
});

test('[STORE-17] the sentence of a fault says first that nothing was saved or taken, in each language', () => {
  const words = {
    en: ['Not saved', 'Not taken'],
    de: ['Nicht gespeichert', 'Nicht übernommen'],
    es: ['No se guardó', 'No se tomó'],
  };
  const others = new Set(['blocked', 'no-such-plant', 'no-such-event', 'nothing-to-undo']);
  for (const language of ['en', 'de', 'es'] as const) {
    const { say } = voice(language, 'metric');
    for (const code of storeFaults.filter((each) => !others.has(each)))
      expect(say(`store.${code}`)).toContain(words[language][code.startsWith('file-') ? 1 : 0]);
  }
});

test('[STORE-17] a browser without storage is not told to install anything', () => {
  expect(
    said({ closed: 'no-storage', device: { ...calm.device, installation: 'install-first' } }).map(({ code }) => code),
  ).toEqual(['no-storage']);
});
