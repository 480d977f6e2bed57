import type { StoreState } from './plant-store.ts';

/** What a person should know about what is kept; each has a sentence `store.notice.<code>`. */
export const noticeCodes = [
  'lost',
  'back-again',
  'broken',
  'newer',
  'closed',
  'no-storage',
  'blocked',
  'reserve-used',
  'nearly-full',
  'private',
  'clock',
  'unknown-events',
  'practice-only',
  'install-first',
  'not-persisted',
  'persisted',
  'copied',
  'not-copied',
  'key-copyable',
] as const;
export type NoticeCode = (typeof noticeCodes)[number];

/** One thing to know. */
export interface Notice {
  readonly code: NoticeCode;
  /** True for what must be known before work goes on; the rest stands among the settings. */
  readonly urgent: boolean;
  readonly data: Readonly<Record<string, string | number>>;
}

/** What there is to say now, the most pressing first. */
export function noticesOf(state: StoreState): readonly Notice[] {
  const { storage, device, broken, closed, unknownEvents, lost } = state;
  const { used_bytes = 0, quota_bytes = 0 } = storage;
  const isKept = closed !== 'no-storage' && closed !== 'blocked';
  const found: readonly (readonly [NoticeCode, boolean, boolean, Notice['data']?])[] = [
    ['lost', lost?.backAgain === false, true, { count: lost?.size ?? 0, name: lost?.name ?? '' }],
    ['back-again', lost?.backAgain === true, true, { count: lost?.size ?? 0, name: lost?.name ?? '' }],
    ['broken', broken !== undefined, true, { at: (broken?.at ?? 0) + 1 }],
    ['newer', closed === 'newer', true],
    ['closed', closed === 'closed', true],
    ['no-storage', closed === 'no-storage', true],
    ['blocked', closed === 'blocked', true],
    ['reserve-used', storage.reserve === 'used', true],
    ['nearly-full', storage.nearlyFull, true, { used: megabytes(used_bytes), quota: megabytes(quota_bytes) }],
    ['private', storage.perhapsPrivate, true],
    ['clock', device.clockJumped_s !== undefined, true, { seconds: Math.abs(device.clockJumped_s ?? 0) }],
    ['unknown-events', unknownEvents > 0, true, { count: unknownEvents }],
    ['practice-only', isKept && device.installation === 'practice-only', true],
    ['install-first', isKept && device.installation === 'install-first', false],
    ['not-persisted', isKept && storage.persisted === false, false],
    ['persisted', isKept && storage.persisted === true, false],
    ['copied', isKept && storage.secondCopy === 'kept', false],
    ['not-copied', isKept && storage.secondCopy !== 'kept', false],
    ['key-copyable', isKept && device.keyCanBeCopied, false],
  ];
  return found.flatMap(([code, applies, urgent, data = {}]) => (applies ? [{ code, urgent, data }] : []));
}

function megabytes(bytes: number): number {
  return Math.round(bytes / 2 ** 20);
}
