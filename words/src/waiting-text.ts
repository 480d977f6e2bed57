import type { Voice } from './speak.ts';

/** How long until a next visit: within three days it is told in hours. */
export function waitingText(days: number, voice: Voice): string {
  return days < 3 ? voice.write(days * 86_400, 'time', { digits: 0 }) : voice.write(days, 'days');
}
