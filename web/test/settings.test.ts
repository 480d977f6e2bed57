import { describe, expect, test } from 'vitest';
import { parseSettings, settingsFor } from '../src/settings/settings.ts';

const fallback = settingsFor(['en-GB']);

describe('settings of a device', () => {
  test.each([
    [['de-AT', 'en'], 'de', 'metric'],
    [['fr-FR', 'es-MX'], 'es', 'metric'],
    [['en-US'], 'en', 'us'],
    [['pt-BR'], 'en', 'metric'],
    [[], 'en', 'metric'],
  ] as const)('[WEB-10] a browser set to %j starts in %s with %s units', (tags, language, units) => {
    expect(settingsFor(tags)).toMatchObject({ language, units, theme: 'system' });
    expect(settingsFor(tags).people).toBeUndefined();
  });
  test('[WEB-10] what was stored comes back', () => {
    const chosen = { language: 'es', units: 'us', theme: 'night', people: 2, press: 'P2' } as const;
    expect(parseSettings(JSON.stringify(chosen), fallback)).toEqual(chosen);
  });
  test.each([null, '', '{', '[]', '7', 'null', '{"language":"xx","units":1,"theme":"pink","people":3,"press":4}'])(
    '[WEB-10] %j in the store leaves the defaults',
    (stored) => {
      expect(parseSettings(stored, fallback)).toEqual(fallback);
    },
  );
});
