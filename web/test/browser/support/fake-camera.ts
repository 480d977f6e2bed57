import { writeFileSync } from 'node:fs';
import { codeModules, codePicture } from '../../../../sheets/src/paper/code-picture.ts';

/** What a camera sees: how bright each place is, 0 to 255. */
interface Scene {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

interface View {
  readonly width?: number;
  readonly height?: number;
  /** Side of the code with its quiet zone, in dots. */
  readonly side?: number;
  /** How far the hand is turned [rad]. */
  readonly turn?: number;
  /** Brightness of ink and of paper. */
  readonly ink?: number;
  readonly paper?: number;
}

/** A label as a hand-held camera sees it: turned a little, grey instead of black, grainy. */
export function sceneOf(payload: string, view: View = {}): Scene {
  const { width = 640, height = 480, side = 300, turn = 0.12, ink = 60, paper = 190 } = view;
  const modules = codeModules(payload, 'Q');
  const dark = darkModules(payload, modules);
  const grain = noise(42);
  const grey = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const [dx, dy] = [x - width / 2, y - height / 2];
      const column = Math.floor(((dx * Math.cos(turn) + dy * Math.sin(turn)) / side + 0.5) * modules);
      const row = Math.floor(((dy * Math.cos(turn) - dx * Math.sin(turn)) / side + 0.5) * modules);
      const inside = column >= 0 && column < modules && row >= 0 && row < modules;
      const shade = inside ? (dark.has(`${column} ${row}`) ? ink : paper) : (ink + paper) / 2;
      grey[y * width + x] = Math.max(0, Math.min(255, shade + 16 * (grain() - 0.5)));
    }
  }
  return { width, height, grey };
}

/** The dark modules of a code, by column and row, quiet zone counted. */
function darkModules(payload: string, modules: number): ReadonlySet<string> {
  const picture = codePicture(payload, { x: 0, y: 0 }, modules, 'Q');
  const bars = picture.shape === 'path' ? [...picture.d.matchAll(/M(\d+) (\d+) h(\d+) v1 /g)] : [];
  return new Set(
    bars.flatMap(([, x, y, wide]) => Array.from({ length: Number(wide) }, (_, i) => `${Number(x) + i} ${y}`)),
  );
}

/** Even noise that is the same on every machine: Park and Miller's minimal standard generator (1988). */
function noise(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Flags with which the browser takes a film for its camera, and for a person who allows it or refuses. */
export function cameraFlags(film: string, answer: 'allow' | 'deny'): readonly string[] {
  return [
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-video-capture=${film}`,
    `--use-fake-ui-for-media-stream${answer === 'deny' ? '=deny' : ''}`,
  ];
}

/** Writes a scene as a film of two frames that the browser plays again and again (YUV4MPEG2, 4:2:0). */
export function writeFilm(file: string, { width, height, grey }: Scene): void {
  const colourless = Buffer.alloc((width * height) / 2, 128);
  const frame = Buffer.concat([Buffer.from('FRAME\n'), grey, colourless]);
  const head = Buffer.from(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`);
  writeFileSync(file, Buffer.concat([head, frame, frame]));
}

/** A scene as a photo that browsers read: a Windows bitmap of 24 bits, rows from the bottom up. */
export function photoOf({ width, height, grey }: Scene): { name: string; mimeType: string; buffer: Buffer } {
  const rowLength = Math.ceil((width * 3) / 4) * 4;
  const buffer = Buffer.alloc(54 + rowLength * height);
  buffer.write('BM');
  buffer.writeUInt32LE(buffer.length, 2);
  buffer.writeUInt32LE(54, 10);
  buffer.writeUInt32LE(40, 14);
  buffer.writeInt32LE(width, 18);
  buffer.writeInt32LE(height, 22);
  buffer.writeUInt16LE(1, 26);
  buffer.writeUInt16LE(24, 28);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      buffer.fill(
        grey[y * width + x] ?? 0,
        54 + (height - 1 - y) * rowLength + x * 3,
        57 + (height - 1 - y) * rowLength + x * 3,
      );
    }
  }
  return { name: 'photo.bmp', mimeType: 'image/bmp', buffer };
}
