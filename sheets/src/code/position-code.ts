import { checksum, family, sealed } from './checksum.ts';

/** What the label of a position says: which position, and of which plant. */
export interface PositionCode {
  readonly position: string;
  /** Mark of the plant, see `plantMark`. */
  readonly plant: string;
}

/** Letter behind the family's name that tells a label from a card. */
export const labelKind = 'P';
export const markLength = 4;

/**
 * Short mark of a plant, so that a label of one plant is not taken for the like-named position of another: the low 20 bits
 * of the CRC-32 of its id.
 * @param plantId - the plant's id
 */
export function plantMark(plantId: string): string {
  return checksum(plantId).slice(-markLength);
}

/**
 * The payload of a position's label: `LW1P position mark checksum`. Data, never an address.
 * @param code - position and plant mark; neither may hold a space
 */
export function positionCode(code: PositionCode): string {
  return sealed([`${family}${labelKind}`, code.position, code.plant]);
}
