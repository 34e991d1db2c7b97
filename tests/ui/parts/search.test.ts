import { expect, test } from 'vitest';
import { found } from '#ui/parts/search';

const places = ['Zürich, Löwenplatz', 'Saw cut', 'Sealant for a cut'];
const search = (wanted: string) => found(places, wanted, (place) => place);

test('nothing wanted finds all', () => {
  expect(search('')).toEqual(places);
  expect(search('   ')).toEqual(places);
});

test('case, accents and the order of words do not matter', () => {
  expect(search('LOWEN zur')).toEqual(['Zürich, Löwenplatz']);
  expect(search('Löwen')).toEqual(['Zürich, Löwenplatz']);
  expect(search('cut saw')).toEqual(['Saw cut']);
});

test('every word must be there', () => {
  expect(search('cut')).toEqual(['Saw cut', 'Sealant for a cut']);
  expect(search('cut lowen')).toEqual([]);
});
