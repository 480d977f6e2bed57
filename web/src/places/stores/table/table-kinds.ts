import type { StoreKind } from '../../../form/thing-layout.ts';

/** Kinds of things that come in long lists, which people keep in spreadsheets. */
export const tableKinds = ['positions', 'belts', 'rolls'] as const satisfies readonly StoreKind[];
export type TableKind = (typeof tableKinds)[number];

export function isTableKind(kind: string): kind is TableKind {
  return (tableKinds as readonly string[]).includes(kind);
}
