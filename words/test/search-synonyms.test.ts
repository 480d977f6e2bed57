import { describe, expect, test } from 'vitest';
import { plainLetters, searchSynonyms, searchTerms, termsFor } from '../src/search-synonyms.ts';

describe('search', () => {
  test.each(['vulcanise', 'vulkanisieren', 'vulcanizar', 'VULCANIZADO', 'Stoß'])(
    '[WORDS-15] %s finds the splice',
    (said) => {
      expect(termsFor(said)).toContain('splice');
    },
  );

  test('[WORDS-15] a beginning is enough, accents do not matter, nothing finds nothing', () => {
    expect(termsFor('Umläu')).toEqual(['revolutions']);
    expect(termsFor('consignación')).toEqual(['lock-out']);
    expect(termsFor('xyz')).toEqual([]);
    expect(termsFor(' ')).toEqual([]);
  });

  test('[WORDS-15] every term has words, written as search compares them', () => {
    expect(searchSynonyms.map((row) => row.term)).toEqual([...searchTerms]);
    for (const word of searchSynonyms.flatMap((row) => row.said)) expect(plainLetters(word)).toBe(word);
  });
});
