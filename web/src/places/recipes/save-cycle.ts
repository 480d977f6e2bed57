import type { CycleCurve } from '@loopwright/jobs';
import { curveCsv, type Drawing, stackedSvg } from '@loopwright/sheets';
import { handOver } from '../../page/hand-over.ts';

/** Times as large as it is drawn: enough for a report on paper. */
const scale = 5;

/** The pictures as one SVG, black on white, one below the other. */
export function saveSvg(drawings: readonly Drawing[], name: string): void {
  handOver(new Blob([stackedSvg(drawings).svg], { type: 'image/svg+xml' }), `${name}.svg`);
}

/** The same picture as PNG. */
export async function savePng(drawings: readonly Drawing[], name: string): Promise<void> {
  const { svg, ...size } = stackedSvg(drawings);
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    handOver(await painted(image, size), `${name}.png`);
  } finally {
    URL.revokeObjectURL(address);
  }
}

async function painted(image: HTMLImageElement, { width, height }: Pick<Drawing, 'width' | 'height'>): Promise<Blob> {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [Math.ceil(width * scale), Math.ceil(height * scale)];
  const brush = canvas.getContext('2d');
  if (brush === null) throw new Error('no canvas');
  brush.fillStyle = '#ffffff';
  brush.fillRect(0, 0, canvas.width, canvas.height);
  brush.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob === null ? reject(new Error('no picture')) : resolve(blob)), 'image/png'),
  );
}

/** The curve as numbers in SI, one row a time. */
export function saveCsv(curve: CycleCurve, name: string): void {
  handOver(new Blob([curveCsv(curve)], { type: 'text/csv' }), `${name}.csv`);
}
