import type { Theme } from './settings.ts';

/** For which screens each of the page's two colours of the browser's bar counts: the day's first, then the night's. */
const media: Readonly<Record<Theme, readonly [day: string, night: string]>> = {
  system: ['(prefers-color-scheme: light)', '(prefers-color-scheme: dark)'],
  day: ['all', 'not all'],
  night: ['not all', 'all'],
};

/** Gives the bar of the browser or of the installed app the colour of the theme. */
export function colourBrowserBar(theme: Theme): void {
  const colours = document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]');
  for (const [at, counts] of media[theme].entries()) colours.item(at)?.setAttribute('media', counts);
}
