import { describe, expect, test } from 'vitest';
import { plainText, searchPositions } from '../src/places/lines/search-positions.ts';

const positions = [
  { id: 'QM-02-1', words: ['Sort', 'Alder-24', 'Running'] },
  { id: 'QM-02-3', words: ['Sort', 'Alder-24', 'Running'] },
  { id: 'QM-02-13', words: ['Sort', 'Alder-24', 'Re-tension due', 'Nachspannen fällig'] },
  { id: 'QM-04-3', words: ['Spine', 'Flint-30', 'Torn', 'Gerissen', 'Rota', 'vulcanise'] },
  { id: 'QM-05-1', words: ['Wash exit', 'Alder-24', 'Vacía'] },
];
const idsFor = (typed: string) => searchPositions(positions, typed).map(({ id }) => id);

describe('search of positions', () => {
  test.each(['QM-04-3', 'qm 04 3', 'qm043', '04-3', '4 3', 'QM–04–3'])('[WEB-03] "%s" finds QM-04-3', (typed) => {
    expect(idsFor(typed)).toEqual(['QM-04-3']);
  });
  test.each(['spine', 'Flint', 'torn', 'GERISSEN', 'rota', 'vulcan', 'spine torn', '3 flint'])(
    '[WEB-03] "%s" finds the torn position by line, belt, state or a wrong word',
    (typed) => {
      expect(idsFor(typed)).toEqual(['QM-04-3']);
    },
  );
  test('[WEB-03] accents may be left out, or typed where there are none', () => {
    expect(idsFor('vacia')).toEqual(['QM-05-1']);
    expect(idsFor('fallig')).toEqual(['QM-02-13']);
    expect(idsFor('sört 1')).toEqual(['QM-02-1', 'QM-02-13']);
  });
  test('[WEB-03] a number is a part of the id or a whole word: 04-3 does not find a belt 30, 30 does', () => {
    const spine = [1, 3].map((number) => ({ id: `QM-04-${number}`, words: ['Flint-30'] }));
    expect(searchPositions(spine, '04-3').map(({ id }) => id)).toEqual(['QM-04-3']);
    expect(searchPositions(spine, 'flint 30')).toHaveLength(2);
  });
  test('[WEB-03] every typed word must be answered', () => {
    expect(idsFor('spine alder')).toEqual([]);
  });
  test('[WEB-03] nothing typed, or only marks, asks for nothing', () => {
    expect(idsFor('')).toEqual([]);
    expect(idsFor(' - ')).toEqual([]);
  });
  test('[WEB-03] an exact id comes before those it begins', () => {
    const twice = [
      { id: 'A-10', words: [] },
      { id: 'A-1', words: [] },
    ];
    expect(searchPositions(twice, 'a-1').map(({ id }) => id)).toEqual(['A-1', 'A-10']);
  });
  test('[WEB-03] signs of a pattern language are only letters to the search', () => {
    expect(idsFor('.*')).toEqual([]);
    expect(plainText('(QM)+[04]')).toBe('qm 04');
  });
  test('[WEB-03] an id with all of it in one piece comes before those that hold the words apart', () => {
    const lines = ['L001-100', 'L100-7', 'L100-100'].map((id) => ({ id, words: [] }));
    expect(searchPositions(lines, '100-100').map(({ id }) => id)).toEqual(['L100-100', 'L001-100']);
  });
  test('[WEB-03] a list searched twice answers the same, and a list that changed answers anew', () => {
    expect(idsFor('qm-02')).toEqual(idsFor('qm-02'));
    expect(searchPositions([...positions, { id: 'QM-02-9', words: [] }], 'qm-02')).toHaveLength(4);
  });
});
