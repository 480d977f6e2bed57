import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync(new URL('../src/style/tokens.css', import.meta.url), 'utf8');
const tokens = new Map(
  [...css.matchAll(/--([a-z]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)].map(
    ([, name = '', day = '', night = '']) => [name, { day, night }],
  ),
);

// Relative luminance and contrast ratio: Web Content Accessibility Guidelines 2.2, definitions.
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const texts = ['ink', 'soft', 'accent', 'stop', 'care', 'ok'];
const grounds = ['paper', 'wash'];
const cases = (['day', 'night'] as const).flatMap((theme) =>
  grounds.flatMap((ground) => texts.map((text) => ({ theme, ground, text }))),
);

describe('colours', () => {
  test('[WEB-07] the ratio agrees with the printed extremes: white on black is 21:1, equal colours 1:1', () => {
    expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 6);
    expect(contrast('#123456', '#123456')).toBe(1);
  });
  test.each(cases)('[WEB-07] $theme: $text on $ground stands at 7:1 or more', ({ theme, ground, text }) => {
    const ink = tokens.get(text)?.[theme];
    const paper = tokens.get(ground)?.[theme];
    expect([ink, paper]).not.toContain(undefined);
    expect(contrast(ink ?? '', paper ?? '')).toBeGreaterThanOrEqual(7);
  });
  test('[WEB-07] nothing is pure white', () => {
    expect([...tokens.values()].flatMap(({ day, night }) => [day, night])).not.toContain('#ffffff');
  });
});
