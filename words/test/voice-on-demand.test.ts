import { describe, expect, it } from 'vitest';
import * as browser from '../src/browser.ts';
import * as everywhere from '../src/index.ts';
import { languages } from '../src/language.ts';

describe('a language fetched when somebody reads it', () => {
  it('[WORDS-17] speaks once it is ready, with the sentences it has everywhere', async () => {
    for (const language of languages) {
      expect(() => browser.voice(language, 'metric')).toThrow(`"${language}"`);
      await browser.readyLanguage(language);
      for (const key of ['app.lines', 'state.torn', 'app.find'] as const)
        expect(browser.voice(language, 'metric').say(key)).toBe(everywhere.voice(language, 'metric').say(key));
    }
  });

  it('[WORDS-17] knows the rest of a language from the moment it is fetched', async () => {
    for (const language of languages) {
      await browser.readyLanguage(language);
      const speech = browser.voice(language, 'metric');
      expect(speech.has('source.measured')).toBe(false);
      expect(speech.say('source.measured')).toBe('');
      await browser.wholeLanguage(language);
      expect(speech.say('source.measured')).toBe(everywhere.voice(language, 'metric').say('source.measured'));
    }
  });

  it('[WORDS-17] a browser gets everything the others get', () => {
    expect(Object.keys(browser).sort()).toEqual(Object.keys(everywhere).sort());
  });
});
