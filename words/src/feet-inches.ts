import type { Voice } from './speak.ts';
import { joined } from './speak.ts';

const inch_m = 0.0254;

/**
 * A length as a tape in feet and inches shows it, to the nearest sixteenth: `210 ft 11 9/16 in`. An aid beside
 * the decimal inches, not instead of them: a sixteenth is coarser than the length is known.
 */
export function feetInches(voice: Voice, length_m: number): string {
  const sixteenths = Math.round(Math.abs(length_m) / (inch_m / 16));
  const feet = Math.floor(sixteenths / 192);
  const inches = Math.floor((sixteenths % 192) / 16);
  const part = fraction(sixteenths % 16);
  const inchText = [inches > 0 || part === '' ? String(inches) : '', part]
    .filter((piece) => piece !== '')
    .join('\u00a0');
  const parts = [
    ...(feet > 0 ? [joined({ value: voice.number(feet), unit: 'ft' })] : []),
    joined({ value: inchText, unit: 'in' }),
  ];
  return (length_m < 0 && sixteenths > 0 ? '\u2212' : '') + parts.join('\u00a0');
}

function fraction(sixteenths: number): string {
  if (sixteenths === 0) return '';
  const halvings = Math.log2(sixteenths & -sixteenths);
  return `${sixteenths >> halvings}/${16 >> halvings}`;
}
