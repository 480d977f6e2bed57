import { type ByteReader, byteReader } from './byte-reader.ts';
import { jpegHeader } from './jpeg-header.ts';

/** What a picture file says of itself, before anything of it is unpacked. */
export interface PictureHeader {
  readonly form: 'jpeg' | 'png' | 'webp' | 'gif' | 'heif';
  /** As stored, before it is turned. */
  readonly width_px: number;
  readonly height_px: number;
  /** More than one picture in a row. */
  readonly moving: boolean;
  /** The file ends before the picture does. */
  readonly cut: boolean;
}

/**
 * Reads how large a picture is without unpacking it: a file of a few kilobytes may unpack to gigabytes.
 *
 * @param bytes - the whole file
 * @returns undefined for anything that is no picture of a form that cameras or people use
 * @source JPEG: ITU-T T.81 B.2; PNG: W3C PNG 11.2; WebP: RFC 9649; GIF: GIF89a; HEIF: ISO/IEC 23008-12 6.5.3
 */
export function pictureHeader(bytes: Uint8Array): PictureHeader | undefined {
  const file = byteReader(bytes);
  if (file.u16(0) === 0xffd8) return jpegHeader(bytes, file);
  if (file.u32(0) === 0x89504e47 && file.u32(4) === 0x0d0a1a0a) return pngHeader(file);
  if (file.name(0) === 'RIFF' && file.name(8) === 'WEBP') return webpHeader(file);
  if (file.name(0) === 'GIF8') return gifHeader(file);
  return file.name(4) === 'ftyp' ? heifHeader(file) : undefined;
}

function pngHeader(file: ByteReader): PictureHeader | undefined {
  if (file.name(12) !== 'IHDR') return undefined;
  let moving = false;
  let at = 8;
  for (let name = ''; name !== 'IEND' && at < file.length; ) {
    name = file.name(at + 4);
    moving ||= name === 'acTL';
    at += 12 + file.u32(at);
  }
  return { form: 'png', width_px: file.u32(16), height_px: file.u32(20), moving, cut: at > file.length };
}

function webpHeader(file: ByteReader): PictureHeader | undefined {
  const cut = file.length < 8 + file.u32le(4);
  const said = { form: 'webp', moving: false, cut } as const;
  const first = file.name(12);
  if (first === 'VP8 ') return { ...said, width_px: file.u16le(26) & 0x3fff, height_px: file.u16le(28) & 0x3fff };
  if (first === 'VP8L') {
    const bits = file.u32le(21);
    return { ...said, width_px: (bits & 0x3fff) + 1, height_px: ((bits >>> 14) & 0x3fff) + 1 };
  }
  if (first !== 'VP8X') return undefined;
  const moving = (file.u8(20) & 0x02) !== 0;
  return { ...said, moving, width_px: file.u24le(24) + 1, height_px: file.u24le(27) + 1 };
}

/** Whether a GIF moves is told at its end only; none is a photo. */
function gifHeader(file: ByteReader): PictureHeader {
  return { form: 'gif', width_px: file.u16le(6), height_px: file.u16le(8), moving: true, cut: false };
}

const brands = /^(hei[cfmsx]|hev[cmsx]|mif[12]|msf1|avi[fs])$/;
/** The sizes stand before the pictures; nobody looks further than this. */
const mostLooked = 1 << 16;

/** Of several pictures in one file, such as tiles and a preview, the largest is the photo. */
function heifHeader(file: ByteReader): PictureHeader | undefined {
  if (!brands.test(file.name(8))) return undefined;
  let [width_px, height_px] = [0, 0];
  for (let at = 8; at < Math.min(file.length, mostLooked) - 16; at++) {
    if (file.u8(at) !== 0x69 || file.name(at) !== 'ispe') continue;
    const [width, height] = [file.u32(at + 8), file.u32(at + 12)];
    if (width * height > width_px * height_px) [width_px, height_px] = [width, height];
  }
  return { form: 'heif', width_px, height_px, moving: false, cut: false };
}
