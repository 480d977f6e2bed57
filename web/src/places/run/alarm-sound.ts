const from_Hz = 620;
const to_Hz = 1660;
const rise_s = 0.9;
const pause_s = 0.35;

let sound: AudioContext | undefined;

/**
 * Makes the sound ready. Browsers let a page sound only after a tap, so every tap of a run calls this.
 *
 * @returns false where this browser makes no sound
 */
export async function readySound(): Promise<boolean> {
  try {
    sound ??= new AudioContext();
    if (sound.state !== 'running') await sound.resume();
    return sound.state === 'running';
  } catch {
    return false;
  }
}

/** One rising tone. */
function rise(at: AudioContext): void {
  const begin = at.currentTime + 0.02;
  const tone = at.createOscillator();
  const loudness = at.createGain();
  tone.type = 'square';
  tone.frequency.setValueAtTime(from_Hz, begin);
  tone.frequency.exponentialRampToValueAtTime(to_Hz, begin + rise_s);
  loudness.gain.setValueAtTime(0, begin);
  loudness.gain.linearRampToValueAtTime(0.9, begin + 0.05);
  loudness.gain.setValueAtTime(0.9, begin + rise_s - 0.05);
  loudness.gain.linearRampToValueAtTime(0, begin + rise_s);
  tone.connect(loudness).connect(at.destination);
  tone.start(begin);
  tone.stop(begin + rise_s);
}

/**
 * Rings and shakes until it is told to stop.
 *
 * @returns how to stop
 */
export function ring(): () => void {
  const once = () => {
    void readySound().then((can) => can && sound && rise(sound));
    shake();
  };
  once();
  const timer = setInterval(once, (rise_s + pause_s) * 1000);
  return () => {
    clearInterval(timer);
    navigator.vibrate?.(0);
  };
}

/** Sounds twice, so that somebody hears whether it can be heard here. */
export async function trySound(): Promise<boolean> {
  const can = await readySound();
  if (!can || sound === undefined) return false;
  rise(sound);
  shake();
  setTimeout(() => sound && rise(sound), (rise_s + pause_s) * 1000);
  return true;
}

function shake(): void {
  navigator.vibrate?.([500, 200, 300]);
}
