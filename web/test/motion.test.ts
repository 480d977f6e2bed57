import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const source = new URL('../src/', import.meta.url);
const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((name) => /\.(css|tsx?)$/.test(name));
const textOf = (name: string) => readFileSync(new URL(name, source), 'utf8');

const moving = /\b(transition|animation)[\w-]*\s*:|@keyframes|scroll-behavior|behavior: 'smooth'|\.animate\(/g;

/** Everything outside of what holds only where nobody asked for less motion (CSS Media Queries 5, section 12.1). */
function alwaysHeld(css: string): string {
  const start = css.search(/@media[^{]*prefers-reduced-motion:\s*no-preference[^{]*\{/);
  if (start < 0) return css;
  let end = css.indexOf('{', start) + 1;
  for (let depth = 1; depth > 0 && end < css.length; end += 1) {
    depth += css[end] === '{' ? 1 : css[end] === '}' ? -1 : 0;
  }
  return css.slice(0, start) + alwaysHeld(css.slice(end));
}

test('[WEB-18] nothing moves on a device that asks for less motion', () => {
  const faults = files.flatMap(
    (name) =>
      alwaysHeld(textOf(name))
        .match(moving)
        ?.map((what) => `${name}: ${what}`) ?? [],
  );
  expect(faults).toEqual([]);
});

test('[WEB-18] what would move is found', () => {
  const guarded = '@media (prefers-reduced-motion: no-preference) { .a { transition: color 1s; } }';
  expect(alwaysHeld(`${guarded} .b { animation-name: x; }`).match(moving)).toEqual(['animation-name:']);
  expect(alwaysHeld(guarded).match(moving)).toBe(null);
  expect(files.map(textOf).join('').match(moving)?.length).toBeGreaterThan(0);
});
