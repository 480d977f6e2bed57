import type { Plant } from '@loopwright/plant';
import { type CodeFault, plantMark, readCode } from '@loopwright/sheets';

/** What a scanned text means on the plant that is shown. Only `opens` leads anywhere by itself. */
export type Judged =
  | { readonly result: 'opens'; readonly position: string }
  | { readonly result: 'unknown'; readonly position: string }
  | { readonly result: 'other-plant'; readonly position: string; readonly isHere: boolean }
  | { readonly result: 'refused'; readonly why: CodeFault; readonly text: string };

const mostShown = 80;

/**
 * Judges a scanned text. A printed card says no plant, so its position is looked for in the plant that is shown.
 *
 * @param text - as the camera, a photo or a hand scanner gave it
 * @param plant - the plant that is shown
 */
export function judgeCode(text: string, plant: Plant): Judged {
  const code = readCode(text);
  if (code.is === 'refused') return { result: 'refused', why: code.why, text: shown(text) };
  const { position } = code;
  const isHere = Object.hasOwn(plant.positions, position);
  if (code.is === 'position' && code.plant !== plantMark(plant.id)) return { result: 'other-plant', position, isHere };
  return isHere ? { result: 'opens', position } : { result: 'unknown', position };
}

/** A stranger's text as far as it may be shown: signs that cannot be seen or turn the line round are left out. */
function shown(text: string): string {
  const visible = Array.from(text.replaceAll(/[\p{C}\p{Zl}\p{Zp}]/gu, ' ').trim());
  return visible.length > mostShown ? `${visible.slice(0, mostShown).join('')}…` : visible.join('');
}
