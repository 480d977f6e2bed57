/** What a chosen file gave: the texts of its codes, or that it is no photo. */
export type PhotoReading = readonly string[] | 'not-a-photo';

const most_bytes = 30_000_000;
const mostDots = 2400;

/** Reads the codes in a file that somebody chose. Drawings with commands in them (SVG) are not photos. */
export async function readPhoto(file: File): Promise<PhotoReading> {
  if (file.size > most_bytes || !/^image\/(?!svg)/.test(file.type)) return 'not-a-photo';
  const bitmap = await createImageBitmap(file).catch(() => undefined);
  if (bitmap === undefined) return 'not-a-photo';
  const pixels = pixelsOf(bitmap);
  bitmap.close();
  if (pixels === undefined) return 'not-a-photo';
  const { codesInPhoto } = await import('./read-codes.ts');
  return codesInPhoto(pixels);
}

function pixelsOf(bitmap: ImageBitmap): ImageData | undefined {
  const scale = Math.min(1, mostDots / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  context?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return context?.getImageData(0, 0, canvas.width, canvas.height);
}
