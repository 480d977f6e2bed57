/** Why there is no picture. */
export type CameraFault = 'denied' | 'none' | 'busy' | 'insecure';

// The camera at the back, as fine as it gives without effort; what it cannot do is no reason to refuse.
const wanted: MediaStreamConstraints = {
  audio: false,
  video: { facingMode: { ideal: 'environment' }, width: { ideal: 1920 }, height: { ideal: 1080 } },
};

const faults: Readonly<Record<string, CameraFault>> = {
  NotAllowedError: 'denied',
  SecurityError: 'denied',
  NotFoundError: 'none',
  OverconstrainedError: 'none',
  NotSupportedError: 'none',
};

/** Asks for the camera; a browser without one to give, or a person who refuses, is an answer, not an error. */
export async function openCamera(): Promise<MediaStream | CameraFault> {
  // Pages from http on another machine get no camera at all.
  const { mediaDevices } = navigator as { readonly mediaDevices?: MediaDevices };
  if (mediaDevices === undefined) return window.isSecureContext ? 'none' : 'insecure';
  try {
    return await mediaDevices.getUserMedia(wanted);
  } catch (cause) {
    return faults[cause instanceof Error ? cause.name : ''] ?? 'busy';
  }
}

export function closeCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

interface WithTorch {
  readonly torch?: boolean;
}

/** The camera's lamp, where it has one that a page may switch. */
export function torchOf(stream: MediaStream): ((on: boolean) => Promise<void>) | undefined {
  const [track] = stream.getVideoTracks();
  const able = (track?.getCapabilities?.() ?? {}) as WithTorch;
  if (track === undefined || able.torch !== true) return undefined;
  return (on) => track.applyConstraints({ advanced: [{ torch: on } as MediaTrackConstraintSet] });
}
