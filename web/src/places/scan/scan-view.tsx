import { useEffect, useRef, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { torchOf } from './camera.ts';
import { type CameraState, useCamera } from './use-camera.ts';
import { watchFrames } from './watch-frames.ts';

interface ScanViewProps {
  readonly onRead: (texts: readonly string[]) => void;
}

/** What the camera sees, and what helps it to see; without a camera, why and what to do. */
export function ScanView({ onRead }: ScanViewProps) {
  const { camera, again } = useCamera();
  if (camera.status === 'off') return <NoCamera camera={camera} onAgain={again} />;
  return <Picture stream={camera.status === 'on' ? camera.stream : undefined} onRead={onRead} />;
}

interface NoCameraProps {
  readonly camera: Extract<CameraState, { status: 'off' }>;
  readonly onAgain: () => void;
}

function NoCamera({ camera, onAgain }: NoCameraProps) {
  const { say } = useSpeech();
  const { why } = camera;
  return (
    <div className="scan-off" role="status">
      <p className="strong">{say(`scan.camera.${why}`)}</p>
      <p>{say(`scan.camera-next.${why}`)}</p>
      {why === 'insecure' ? null : (
        <button type="button" className="button" onClick={onAgain}>
          {say('scan.again')}
        </button>
      )}
    </div>
  );
}

type Trouble = 'dark' | 'slow' | 'reader';
/** After so long without a code it is said what helps. */
const slow_ms = 9_000;

function Picture({ stream, onRead }: { readonly stream: MediaStream | undefined } & ScanViewProps) {
  const { say } = useSpeech();
  const video = useRef<HTMLVideoElement>(null);
  const [troubles, setTroubles] = useState<ReadonlySet<Trouble>>(new Set());
  const told = useRef(onRead);
  told.current = onRead;
  useEffect(() => {
    const element = video.current;
    if (element === null || stream === undefined) return;
    const note = (trouble: Trouble, there: boolean) => setTroubles((before) => changed(before, trouble, there));
    element.srcObject = stream;
    // A browser that will not play by itself shows the first frame, and that is read.
    element.play().catch(() => undefined);
    const slow = setTimeout(() => note('slow', true), slow_ms);
    const end = watchFrames(element, {
      onRead: (texts) => {
        clearTimeout(slow);
        note('slow', false);
        told.current(texts);
      },
      onDark: (isDark) => note('dark', isDark),
      onFault: () => note('reader', true),
    });
    return () => {
      end();
      clearTimeout(slow);
      element.srcObject = null;
    };
  }, [stream]);
  const worst = (['reader', 'dark', 'slow'] as const).find((trouble) => troubles.has(trouble));
  return (
    <div className="scan-view">
      <div className="scan-frame">
        <video ref={video} muted playsInline aria-label={say('scan.title')} />
      </div>
      <p role="status" data-trouble={worst}>
        {worst === undefined ? say(stream === undefined ? 'scan.starting' : 'scan.aim') : say(`scan.${worst}`)}
      </p>
      {stream === undefined ? null : <Torch stream={stream} />}
    </div>
  );
}

function changed(before: ReadonlySet<Trouble>, trouble: Trouble, there: boolean): ReadonlySet<Trouble> {
  if (before.has(trouble) === there) return before;
  const after = new Set(before);
  if (there) after.add(trouble);
  else after.delete(trouble);
  return after;
}

function Torch({ stream }: { readonly stream: MediaStream }) {
  const { say } = useSpeech();
  const [on, setOn] = useState(false);
  const [turn] = useState(() => torchOf(stream));
  if (turn === undefined) return null;
  const press = () =>
    turn(!on).then(
      () => setOn(!on),
      () => undefined,
    );
  return (
    <button type="button" className="button" aria-pressed={on} onClick={() => void press()}>
      {say('scan.torch')}
    </button>
  );
}
