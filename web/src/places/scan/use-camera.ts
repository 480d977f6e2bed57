import { useEffect, useState } from 'react';
import { type CameraFault, closeCamera, openCamera } from './camera.ts';

export type CameraState =
  | { readonly status: 'starting' }
  | { readonly status: 'on'; readonly stream: MediaStream }
  | { readonly status: 'off'; readonly why: CameraFault };

/** The camera while this is shown and looked at; it is given back at once when one leaves or turns to something else. */
export function useCamera(): { readonly camera: CameraState; readonly again: () => void } {
  const [camera, setCamera] = useState<CameraState>({ status: 'starting' });
  const [attempt, setAttempt] = useState(0);
  const isSeen = useSeen();
  useEffect(() => {
    // A new attempt asks the browser anew.
    void attempt;
    if (!isSeen) return;
    const held = holdCamera(setCamera);
    return () => held.giveBack();
  }, [attempt, isSeen]);
  return { camera, again: () => setAttempt(attempt + 1) };
}

function holdCamera(tell: (state: CameraState) => void): { giveBack(): void } {
  let wanted = true;
  let held: MediaStream | undefined;
  tell({ status: 'starting' });
  void openCamera().then((answer) => {
    if (typeof answer === 'string') {
      if (wanted) tell({ status: 'off', why: answer });
      return;
    }
    // Whoever left while the browser was asking must not be filmed.
    if (!wanted) return closeCamera(answer);
    held = answer;
    // A camera that is pulled out, or taken by a call.
    answer.getVideoTracks()[0]?.addEventListener('ended', () => wanted && tell({ status: 'off', why: 'busy' }));
    tell({ status: 'on', stream: answer });
  });
  return {
    giveBack: () => {
      wanted = false;
      if (held !== undefined) closeCamera(held);
    },
  };
}

function useSeen(): boolean {
  const [isSeen, setSeen] = useState(document.visibilityState === 'visible');
  useEffect(() => {
    const look = () => setSeen(document.visibilityState === 'visible');
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);
  return isSeen;
}
