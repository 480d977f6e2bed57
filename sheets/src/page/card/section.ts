import type { MissingCode, Quantity, SpliceCard } from '@loopwright/jobs';
import type { MessageKey, Voice } from '@loopwright/words';
import { type FigureStyle, figureOf } from '../figure.ts';
import type { Block, Row, Section } from '../page.ts';

/** What every section is made from. */
export interface CardReader {
  readonly card: SpliceCard;
  readonly voice: Voice;
}

/** A section before it has its number. */
export type Step = Omit<Section, 'number'>;

export const text = (content: string, style: 'plain' | 'soft' | 'strong' = 'plain'): Block => ({
  kind: 'text',
  text: content,
  ...(style === 'soft' && { soft: true }),
  ...(style === 'strong' && { strong: true }),
});

export const ticks = (items: readonly string[]): Block => ({ kind: 'list', items, ticks: true });
export const caution = (level: 'stop' | 'care' | 'note', content: string): Block => ({
  kind: 'caution',
  level,
  text: content,
});

/** A row for a quantity that may be unknown; unknown gives no row. */
export function row(
  { voice }: CardReader,
  label: MessageKey,
  quantity: Quantity | undefined,
  more: { readonly style?: FigureStyle; readonly note?: string } = {},
): Row[] {
  if (!quantity) return [];
  const figure = figureOf(quantity, voice, more.style);
  return [{ label: voice.say(label), figure, ...(more.note !== undefined && { note: more.note }) }];
}

/** A block of rows, or nothing when there are none. */
export const rows = (list: readonly Row[]): Block[] => (list.length > 0 ? [{ kind: 'rows', rows: list }] : []);

/** What the plant does not know, said where it matters, with what to measure. */
export function unknowns({ card, voice }: CardReader, codes: readonly MissingCode[]): Block[] {
  return codes
    .filter((code) => card.missing.includes(code))
    .map((code) => caution('care', voice.say(`missing.${code}`)));
}

/** Blocks that a sheet with two sides shows on the back. */
export const overleaf = (blocks: readonly Block[]): Block[] => blocks.map((block) => ({ ...block, overleaf: true }));
