import { describe, expect, test } from 'vitest';
import { argumentsOf, compileMessage } from '../src/arguments-of.ts';
import { type Language, languages } from '../src/language.ts';
import { catalogues, type MessageKey } from '../src/messages/index.ts';
import { voice } from '../src/voice.ts';

const keys = Object.keys(catalogues.en) as MessageKey[];
const messages = languages.flatMap((language) =>
  keys.map((key) => ({ language, key, text: catalogues[language][key] })),
);

describe('catalogue', () => {
  test('[WORDS-01] every language has every key', () => {
    expect(keys.length).toBeGreaterThan(200);
    for (const language of languages) expect(Object.keys(catalogues[language]).sort()).toEqual([...keys].sort());
  });

  test('[WORDS-01] every language takes the same values, in the same way', () => {
    const uses = (text: string, language: Language) => [...argumentsOf(compileMessage(text, language))].sort();
    const different = messages.filter(
      ({ language, key, text }) =>
        JSON.stringify(uses(text, language)) !== JSON.stringify(uses(catalogues.en[key], 'en')),
    );
    expect(different).toEqual([]);
  });

  test('[WORDS-01] no message is empty or padded', () => {
    expect(messages.filter(({ text }) => text.trim() === '' || text !== text.trim() || text.includes('  '))).toEqual(
      [],
    );
  });

  test('[WORDS-02] every message formats with its values and without them', () => {
    for (const { language, key, text } of messages) {
      const speaker = voice(language, 'metric');
      const names = [...argumentsOf(compileMessage(text, language)).keys()];
      const said = speaker.say(key, Object.fromEntries(names.map((name) => [name, 'Wert-9'])));
      const counted = speaker.say(key, Object.fromEntries(names.map((name) => [name, 2])));
      for (const sentence of [said, counted, speaker.say(key)]) {
        expect(sentence, `${language} ${key}`).not.toMatch(/[{}]|undefined|NaN|\[object/);
      }
    }
  });

  test('[WORDS-02] a value that nobody knows reads as a dash or takes the variant for it', () => {
    const english = voice('en', 'metric');
    expect(english.say('warning.take-up-exhausted')).toContain('has – of travel');
    expect(english.say('warning.slip', { pull: '1', limit: '2', set: '3' })).toContain('Take load off or improve');
  });

  const forbidden = [
    /\bsafe(ly|ty)?\b/i,
    /\bcertif/i,
    /\bguarant/i,
    /\bgarant/i,
    /zertifi/i,
    /\bsicher(er|e|es)?\b(?! Abstand)/i,
    /\bsegur[oa]s?\b/i,
    /certificad/i,
    /vul[ck]ani[sz]/i,
    /\bcur(e|es|ed|ing)\b/i,
    /\bsorry\b|\bplease\b|\bbitte\b|\bpor favor\b|\boops\b|leider|lo siento/i,
    /[!¡]/,
    /\bwell done\b|\bgreat\b|\bsuper\b|\bperfect/i,
  ];

  test.each(forbidden)('[WORDS-03] no message says %s', (pattern) => {
    // `app.find.` holds what people type into the search, not what the product says.
    const spoken = messages.filter(({ key }) => !key.startsWith('app.find.'));
    expect(spoken.filter(({ text }) => pattern.test(text))).toEqual([]);
  });

  test('[WORDS-04] no markup, no straight quotes', () => {
    expect(messages.filter(({ text }) => /<\/?[a-z]|&[a-z]+;|"/i.test(text))).toEqual([]);
  });

  test('[WORDS-04] angle brackets in a value come out as they went in', () => {
    const said = voice('en', 'metric').say('refusal.not-a-number', { value: '<b>3</b>' });
    expect(said).toContain('“<b>3</b>”');
  });

  test('[WORDS-14] labels leave room in German and Spanish', () => {
    const long = messages.filter(({ language, key, text }) => {
      const english = catalogues.en[key];
      return language !== 'en' && english.length <= 30 && text.length > Math.max(2.2 * english.length, 14);
    });
    for (const { language, key, text } of long) console.warn(`long label ${language} ${key}: ${text}`);
    expect(long.length).toBeLessThan(keys.length / 10);
  });
});
