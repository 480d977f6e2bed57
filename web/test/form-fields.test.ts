import { fieldsOf, thingSchemas } from '@loopwright/plant';
import { languages, voice } from '@loopwright/words';
import { describe, expect, test } from 'vitest';
import { choiceWord, fieldLabel } from '../src/form/field-words.ts';
import { formFields, formGroups } from '../src/form/form-field.ts';
import { storeKinds, thingLayouts } from '../src/form/thing-layout.ts';
import { unitSign, unitsOf } from '../src/form/unit-choice.ts';

describe.each(storeKinds)('%s', (kind) => {
  test('[STORES-02] the form asks for every field of the schema once', () => {
    const { first, more } = formGroups(kind);
    const asked = [...first, ...more].flatMap(({ fields }) => fields.map(({ key }) => key));
    const expected = fieldsOf(thingSchemas[kind]).map(({ key }) => key);
    expect([...asked, 'note'].sort()).toEqual([...expected].sort());
  });

  test('[STORES-02] the layout names only fields that there are', () => {
    const { first, more, row, idFrom = [] } = thingLayouts[kind];
    const names = new Set(formFields(kind).map(({ name }) => name));
    const named = [...[...first, ...more].flatMap(({ fields }) => fields), ...row, ...idFrom];
    expect(named.filter((name) => !names.has(name))).toEqual([]);
  });

  test('[STORES-02] what a thing must say is asked at first, never under “more”', () => {
    const { more } = formGroups(kind);
    expect(more.flatMap(({ fields }) => fields).filter(({ required }) => required)).toEqual([]);
  });

  test.each(languages)('[STORES-02] every field and every answer has its words in %s', (language) => {
    const speaker = voice(language, 'metric');
    const fields = formFields(kind);
    const unnamed = fields.filter(({ name }) => fieldLabel(speaker, kind, name) === name).map(({ name }) => name);
    const unworded = fields.flatMap(({ name, allowed = [] }) =>
      allowed.filter((value) => !/^deg/.test(value) && !hasWord(name, value)).map((value) => `${name}.${value}`),
    );
    function hasWord(name: string, value: string): boolean {
      const dashed = value.replaceAll(' ', '-');
      return [`choice.${name}.${dashed}`, `source.${dashed}`, `state.${dashed}`].some((key) => speaker.has(key));
    }
    expect([...unnamed, ...unworded]).toEqual([]);
    expect(choiceWord(speaker, 'displayUnit', 'degF')).toBe('°F');
  });

  test('[STORES-04] every unit of every number is written as a sign or a word, never as a name of a column', () => {
    const speaker = voice('en', 'metric');
    const signs = formFields(kind).flatMap((field) => unitsOf(field).map(({ unit }) => unitSign(speaker, unit)));
    expect(signs.filter((sign) => /_|pct|deg|ohm|ratio/.test(sign))).toEqual([]);
  });
});
