const quality = 0.85;

/** A picture with what was measured of it before; what nobody measured may take all memory. */
interface Picture {
  readonly bytes: Blob;
  readonly width_px: number;
  readonly height_px: number;
}

/**
 * A picture drawn anew as JPEG: upright, scaled down where it is too long. Only its dots are carried over.
 *
 * @param picture - measured
 * @param longest_px - of the longer side
 * @returns undefined where this browser cannot read it, or has no room for it
 */
export async function drawSmaller(picture: Picture, longest_px: number): Promise<Blob | undefined> {
  const bitmap = await uprightBitmap(picture, longest_px).catch(() => undefined);
  if (bitmap === undefined) return undefined;
  try {
    const scale = Math.min(1, longest_px / Math.max(bitmap.width, bitmap.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(bitmap.width * scale));
    canvas.height = Math.max(1, Math.round(bitmap.height * scale));
    const context = canvas.getContext('2d', { alpha: false });
    if (context === null) return undefined;
    context.imageSmoothingQuality = 'high';
    // What can be seen through in a picture is paper, not night.
    context.fillStyle = '#fff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    return await jpegOf(canvas);
  } finally {
    bitmap.close();
  }
}

function uprightBitmap({ bytes, width_px, height_px }: Picture, longest_px: number): Promise<ImageBitmap> {
  const upright = { imageOrientation: 'from-image' } as const;
  const isLarge = Math.min(width_px, height_px) > longest_px;
  // Scaled while it is unpacked. One side is given: the other follows, however the picture is turned.
  const smaller = { resizeWidth: longest_px, resizeQuality: 'high' } as const;
  return createImageBitmap(bytes, isLarge ? { ...upright, ...smaller } : upright);
}

async function jpegOf(canvas: HTMLCanvasElement): Promise<Blob | undefined> {
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
  return blob?.type === 'image/jpeg' ? blob : undefined;
}
