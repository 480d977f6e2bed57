import { Refusal } from '@loopwright/engine/refusal';
import { spliceCard } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { cardPage, type Page } from '@loopwright/sheets';
import { sentence, type Voice } from '@loopwright/words';

/** What came of asking for a card: the page, or why there is none. */
export type CardResult =
  | { readonly status: 'ready'; readonly page: Page }
  | { readonly status: 'unknown-position' }
  | { readonly status: 'refused'; readonly sentence: string };

/** What a card is asked for. */
export interface CardRequest {
  readonly plant: Plant;
  readonly position: string;
  readonly now: string;
  readonly people: 1 | 2 | undefined;
  readonly press: string;
  readonly speech: Voice;
}

/** Computes the card in the browser, with the same job that the terminal and the paper use. */
export function cardResult({ plant, position, now, people, press, speech }: CardRequest): CardResult {
  if (!Object.hasOwn(plant.positions, position)) return { status: 'unknown-position' };
  // A press chosen on another plant says nothing here.
  const known = Object.hasOwn(plant.presses, press) ? { press } : {};
  try {
    // Until somebody says who splices, the card is the careful one: alone.
    const card = spliceCard(plant, position, { now, people: people ?? 1, ...known });
    return { status: 'ready', page: cardPage(card, speech) };
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    const why = sentence(speech, problem);
    return { status: 'refused', sentence: speech.say('app.card.refused.next', { why }) };
  }
}

let prepared: { readonly request: CardRequest; readonly result: CardResult } | undefined;

/** Computes a card that will most likely be asked for next, while nobody waits. */
export function prepareCard(request: CardRequest): void {
  prepared = { request, result: cardResult(request) };
}

/** The card asked for: the prepared one when it was made for just this, else computed now. */
export function cardAsked(request: CardRequest): CardResult {
  const isSame = prepared !== undefined && keysOf(request).every((key) => prepared?.request[key] === request[key]);
  return isSame && prepared !== undefined ? prepared.result : cardResult(request);
}

function keysOf(request: CardRequest): readonly (keyof CardRequest)[] {
  return Object.keys(request) as (keyof CardRequest)[];
}
