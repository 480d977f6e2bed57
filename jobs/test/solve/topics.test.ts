import { formulaOf } from '@loopwright/engine/worked';
import { describe, expect, it } from 'vitest';
import { valueAt } from '../../src/solve/field-path.ts';
import { answerSchema, formulasOf, solve, type Topic, topicOf, topicSchema, topics } from '../../src/solve/index.ts';
import { examples, type TopicExample } from './examples.ts';

const say = ({ code, path }: { readonly code: string; readonly path: string }) => `${path}: ${code}`;
const answerOf = (topic: Topic, input: unknown) => solve(topic, input, { say });

function exampleOf(topic: Topic): TopicExample {
  const example = examples.find((each) => each.topic === topic.id);
  if (example === undefined) throw new Error(`no example for ${topic.id}`);
  return example;
}

/** Paths of all fields of an input, each with its value. */
function fieldsOf(value: unknown, keys: readonly (string | number)[] = []): [(string | number)[], unknown][] {
  if (value === null || typeof value !== 'object') return [[[...keys], value]];
  const entries = Array.isArray(value) ? value.map((item, i) => [i, item] as const) : Object.entries(value);
  const inside = entries.flatMap(([key, item]) => fieldsOf(item, [...keys, key]));
  return keys.length === 0 ? inside : [[[...keys], value], ...inside];
}

/** The same input with one value changed; `undefined` takes the field away. */
function changed(input: unknown, [key, ...rest]: readonly (string | number)[], value: unknown): unknown {
  if (key === undefined) return value;
  const copy = structuredClone(input) as Record<string | number, unknown>;
  const inside = changed(copy[key], rest, value);
  if (inside === undefined) delete copy[key];
  else copy[key] = inside;
  return copy;
}

const written = (keys: readonly (string | number)[]) =>
  keys
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${key}`))
    .join('')
    .replace(/^\./, '');

it('[SOLVE-01] the topics of this version are there, each with an example', () => {
  expect(topics.map(({ id }) => id)).toEqual([
    'path',
    'cut-length',
    'tension-round-loop',
    'tension-by-sound',
    'tension-by-push',
    'tension-by-marks',
    'edge-slivers',
    'splice-strength',
    'tensile-sample',
    'press-up',
    'supply',
    'pressure',
    'fusion',
    'cycle',
    'cycle-map',
    'canonical',
    'log',
    'two-logs',
    'inclusion',
    'consistency',
  ]);
  expect(topicOf('no-such-topic')).toBeUndefined();
});

describe.each(topics.map((topic) => [topic.id, topic] as const))('%s', (_id, topic) => {
  const example = exampleOf(topic);

  it('[SOLVE-02] answers with the numbers that somebody else computed', async () => {
    const answer = await answerOf(topic, example.input);
    expect(answer.status).toBe('ok');
    for (const { at, value, tolerance } of example.expected) {
      const ours = Number(valueAt(answer, at));
      expect(Math.abs(ours - value), `${written(at)} ${ours}, ${value} by ${example.source}`).toBeLessThanOrEqual(
        tolerance,
      );
    }
  });

  it('[SOLVE-03] an answer has exactly the form that its schema promises', async () => {
    const schema = answerSchema(topic);
    for (const input of [example.input, {}, { ...example.input, colour: 'red' }]) {
      const explained = await solve(topic, input, { say, explain: true });
      expect(schema.safeParse(JSON.parse(JSON.stringify(explained))).error).toBeUndefined();
    }
  });

  it('[SOLVE-04] JSON Schemas name every field of input and answer', async () => {
    const { input, output } = topicSchema(topic) as { input: { properties: object }; output: object };
    expect(Object.keys(input.properties)).toEqual(expect.arrayContaining(Object.keys(example.input)));
    const answer = await answerOf(topic, example.input);
    for (const field of Object.keys(answer)) expect(JSON.stringify(output)).toContain(`"${field}"`);
  });

  it('[SOLVE-05] an unknown field is refused by name, at every depth', async () => {
    const objects = [[], ...fieldsOf(example.input).flatMap(([keys, value]) => (isObject(value) ? [keys] : []))];
    for (const keys of objects) {
      const field = [...keys, 'colour'];
      const answer = await answerOf(topic, changed(example.input, field, 'red'));
      expect(answer).toMatchObject({ status: 'refused', code: 'unknown-field', path: written(field) });
    }
  });

  it('[SOLVE-06] a misspelt field is refused with the name that was meant', async () => {
    const [field] = Object.keys(example.input);
    if (field === undefined) throw new Error('no field');
    const misspelt = { ...example.input, [field]: undefined, [`${field}s`]: example.input[field] };
    const answer = await answerOf(topic, JSON.parse(JSON.stringify(misspelt)));
    expect(answer).toMatchObject({ code: 'unknown-field', path: `${field}s`, data: { meant: field } });
  });

  it('[SOLVE-07] a missing field that has no default is refused by name', async () => {
    const optional = new Set(['lengthTolerance', 'loads', 'pressUp_m', 'checkpoints', 'plate', 'times_s']);
    for (const field of Object.keys(example.input)) {
      if (optional.has(field)) continue;
      const answer = await answerOf(topic, changed(example.input, [field], undefined));
      expect(answer).toMatchObject({ status: 'refused', code: 'missing-field', path: field });
    }
  });

  it('[SOLVE-08] text, null, NaN and infinities in the place of a number are refused with their path', async () => {
    for (const [keys, value] of fieldsOf(example.input)) {
      if (typeof value !== 'number') continue;
      const path = written(keys);
      // A contact may be null: then it is perfect.
      const nothing = keys[0] === 'contacts_W_m2K' ? {} : null;
      const answers = await Promise.all(
        ['12,5', nothing, Number.NaN, Number.POSITIVE_INFINITY].map((wrong) =>
          answerOf(topic, changed(example.input, keys, wrong)),
        ),
      );
      expect(answers.map((answer) => ('code' in answer ? answer.code : answer.status))).toEqual([
        'not-a-number',
        'not-a-number',
        'not-finite',
        'not-finite',
      ]);
      for (const answer of answers) expect(answer).toMatchObject({ path });
    }
  });

  it('[SOLVE-09] every formula behind it is a row of the table, and computes the number shown', async () => {
    const answer = (await solve(topic, example.input, { say, explain: true })) as {
      explain?: ReturnType<typeof Object>;
    };
    const rows = answer.explain as {
      formula: string;
      inputs: Record<string, number>;
      value: number;
      withNumbers: string;
    }[];
    expect(rows.length > 0).toBe(topic.formulas.length > 0);
    expect(formulasOf(topic).map(({ formula }) => formula)).toEqual(
      expect.arrayContaining([...new Set(rows.map(({ formula }) => formula))]),
    );
    for (const { formula, inputs, value, withNumbers } of rows) {
      expect(formulaOf(formula)?.compute(inputs)).toBe(value);
      expect(withNumbers).not.toMatch(/NaN|undefined|null/);
    }
  });

  it('[SOLVE-10] what is not an object is refused, not crashed on', async () => {
    for (const input of [null, 5, 'text', true, [], [example.input]]) {
      expect(await answerOf(topic, input)).toMatchObject({ status: 'refused', code: 'wrong-type', path: '' });
    }
  });
});

const isObject = (value: unknown) => value !== null && typeof value === 'object' && !Array.isArray(value);
