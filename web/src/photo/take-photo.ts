import { sha256Hex } from '@loopwright/records/log';
import { bareJpeg } from './bare-jpeg.ts';
import { drawSmaller } from './draw-smaller.ts';
import { type PictureHeader, pictureHeader } from './picture-header.ts';

/** A photo as it is kept: scaled, turned upright, without place, time and camera. */
export interface Photo {
  readonly blob: Blob;
  readonly sha256: string;
  readonly bytes: number;
  readonly width_px: number;
  readonly height_px: number;
}

/** Why a file gave no photo; each has a sentence `photo.fault.<code>` that says what to do. */
export type PhotoFault =
  | 'empty'
  | 'unreadable'
  | 'too-large'
  | 'not-a-photo'
  | 'moving'
  | 'cut'
  | 'too-many-dots'
  | 'heif'
  | 'not-decoded'
  | 'stopped';

export type TakenPhoto =
  | { readonly photo: Photo }
  | { readonly fault: PhotoFault; readonly data: Readonly<Record<string, number>> };

interface Taking {
  /** Ends the reading; what is there of it is thrown away. */
  readonly signal?: AbortSignal;
  /** Told before a large photo is unpacked, which takes a while [megapixels]. */
  readonly onLarge?: (megapixels: number) => void;
}

/** Longest side of what is kept [px]: a fissure of 0.1 mm shows in a photo of a splice 160 mm long. */
const longestSide_px = 1600;
const mega = 1_000_000;
/** No camera writes more [bytes]. */
const most_bytes = 80 * mega;
/** What any phone can unpack; more takes a while. */
const easily = 40 * mega;
/** The most that is unpacked, and only of forms that cameras write: 440 MB as it lies in memory. */
const atAll = 110 * mega;

/**
 * Reads a chosen picture into a photo that may be kept: measured before it is unpacked, turned upright, scaled to at most
 * 1600 px, drawn anew so that nothing of what stood beside the picture remains.
 *
 * @param file - as chosen by a person; anything
 */
export async function takePhoto(file: Blob, { signal, onLarge }: Taking = {}): Promise<TakenPhoto> {
  if (file.size === 0) return { fault: 'empty', data: {} };
  if (file.size > most_bytes)
    return { fault: 'too-large', data: { size: Math.ceil(file.size / mega), most: most_bytes / mega } };
  const read = await file.arrayBuffer().catch(() => undefined);
  if (read === undefined) return { fault: 'unreadable', data: {} };
  const header = pictureHeader(new Uint8Array(read));
  const fault = headerFault(header);
  if (fault !== undefined || header === undefined) return { fault: fault ?? 'not-a-photo', data: dotsData(header) };
  if (dotsOf(header) > easily) onLarge?.(Math.round(dotsOf(header) / mega));
  const isStopped = () => signal?.aborted === true;
  if (isStopped()) return { fault: 'stopped', data: {} };
  // From here on the bytes in memory are what is drawn: the file itself may change or go.
  const blob = await drawSmaller({ ...header, bytes: new Blob([read]) }, longestSide_px);
  if (isStopped()) return { fault: 'stopped', data: {} };
  return blob === undefined ? { fault: header.form === 'heif' ? 'heif' : 'not-decoded', data: {} } : photoIn(blob);
}

async function photoIn(drawn: Blob): Promise<TakenPhoto> {
  const bytes = bareJpeg(new Uint8Array(await drawn.arrayBuffer()));
  const blob = new Blob([bytes], { type: drawn.type });
  const { width_px = 0, height_px = 0 } = pictureHeader(bytes) ?? {};
  return { photo: { blob, sha256: sha256Hex(bytes), bytes: bytes.length, width_px, height_px } };
}

function headerFault(header: PictureHeader | undefined): PhotoFault | undefined {
  if (header === undefined) return 'not-a-photo';
  if (header.moving) return 'moving';
  if (dotsOf(header) > mostDots(header)) return 'too-many-dots';
  if (header.cut) return 'cut';
  if (dotsOf(header) > 0) return undefined;
  return header.form === 'heif' ? 'heif' : 'not-a-photo';
}

/** What cameras write may be larger than what anybody can pack into a few bytes. */
function mostDots({ form }: PictureHeader): number {
  return form === 'jpeg' || form === 'heif' ? atAll : easily;
}

function dotsData(header: PictureHeader | undefined): Readonly<Record<string, number>> {
  return header === undefined ? {} : { dots: Math.round(dotsOf(header) / mega), most: mostDots(header) / mega };
}

function dotsOf({ width_px, height_px }: PictureHeader): number {
  return width_px * height_px;
}
