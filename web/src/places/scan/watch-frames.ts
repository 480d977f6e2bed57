import { brightness } from './brightness.ts';

/** What is told of the frames that the camera gives. */
export interface FrameWatch {
  /** All codes of one frame; at least one. */
  readonly onRead: (texts: readonly string[]) => void;
  /** Whether it is too dark to read, when that changes. */
  readonly onDark: (isDark: boolean) => void;
  /** The part that reads could not be loaded, or gave up. */
  readonly onFault: () => void;
}

/** As many dots a side as a reader needs at arm's length; more only cost time. */
const mostDots = 1080;
const pause_ms = 80;
const darkBelow = 0.16;
/** Frames in a row that must be dark: a hand before the lens is no dark hall. */
const darkFrames = 4;

/**
 * Looks for codes in the square middle of a running video, which is what the page shows of it.
 *
 * @returns ends the looking
 */
export function watchFrames(video: HTMLVideoElement, { onRead, onDark, onFault }: FrameWatch): () => void {
  const canvas = document.createElement('canvas');
  let timer = 0;
  let going = true;
  let dark = 0;
  const noteLight = (frame: ImageData) => {
    const before = dark >= darkFrames;
    dark = brightness(frame.data) < darkBelow ? dark + 1 : 0;
    if (before !== dark >= darkFrames) onDark(dark >= darkFrames);
  };
  const look = async () => {
    const began = performance.now();
    const frame = squareOf(video, canvas);
    if (frame !== undefined) {
      noteLight(frame);
      const { codesInFrame } = await import('./read-codes.ts');
      const texts = await codesInFrame(frame);
      if (going && texts.length > 0) onRead(texts);
    }
    // A slow device reads half of the time and stays usable in the other.
    if (going) again(Math.max(pause_ms, performance.now() - began));
  };
  const again = (after_ms: number) => {
    timer = window.setTimeout(() => void look().catch(() => going && onFault()), after_ms);
  };
  again(0);
  return () => {
    going = false;
    clearTimeout(timer);
  };
}

function squareOf(video: HTMLVideoElement, canvas: HTMLCanvasElement): ImageData | undefined {
  const { videoWidth, videoHeight } = video;
  const side = Math.min(videoWidth, videoHeight);
  if (side === 0 || video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA) return undefined;
  const dots = Math.min(side, mostDots);
  canvas.width = dots;
  canvas.height = dots;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  context?.drawImage(video, (videoWidth - side) / 2, (videoHeight - side) / 2, side, side, 0, 0, dots, dots);
  return context?.getImageData(0, 0, dots, dots);
}
