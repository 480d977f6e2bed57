import { cardCode } from '@loopwright/records/log';
import type { Page } from '@loopwright/sheets';
import type { Voice } from '@loopwright/words';
import type { PlantStore } from '../../store/plant-store.ts';

/**
 * A card that bears the code of this device's log as it stands: paper in a drawer is a witness that nobody can rewrite.
 *
 * @param page - of the card
 * @param store - of this device; before its first record the page stays as it is
 * @param voice - of the reader
 */
export async function withLogCode(page: Page, store: PlantStore, voice: Voice): Promise<Page> {
  const checkpoint = (await store.witnessDesk()).own()?.checkpoint;
  if (checkpoint === undefined) return page;
  const said = voice.say('seen.on-card', { code: cardCode(checkpoint), count: checkpoint.size });
  const [last = '', ...before] = page.footer.toReversed();
  return { ...page, footer: [...before.toReversed(), `${last} · ${said}`] };
}
