import { expect, test } from 'vitest';
import * as germanAnalysis from '#i18n/de/bundles/analysis';
import * as germanPage from '#i18n/de/bundles/page';
import * as germanViews from '#i18n/de/bundles/views';
import * as englishAnalysis from '#i18n/en/bundles/analysis';
import * as englishPage from '#i18n/en/bundles/page';
import * as englishViews from '#i18n/en/bundles/views';
import { SAME_IN_BOTH } from './same-in-both';

type Text = string | { readonly one: string; readonly other: string };
type Messages = Readonly<Record<string, Text>>;

const BUNDLES: readonly (readonly [string, Messages, Messages])[] = [
  ['page', englishPage.messages, germanPage.messages],
  ['views', englishViews.messages, germanViews.messages],
  ['analysis', englishAnalysis.messages, germanAnalysis.messages]
];

const ENGLISH: Messages = { ...englishPage.messages, ...englishViews.messages, ...englishAnalysis.messages };
const GERMAN: Messages = { ...germanPage.messages, ...germanViews.messages, ...germanAnalysis.messages };

const formsOf = (text: Text | undefined): readonly string[] =>
  text === undefined ? [] : typeof text === 'string' ? [text] : [text.one, text.other];

const placeholders = (text: Text | undefined): readonly string[] =>
  [...new Set(formsOf(text).flatMap((form) => form.match(/\{\w+\}/g) ?? []))].sort();

const germanWhere = (isBad: (form: string) => boolean): readonly string[] =>
  Object.entries(GERMAN)
    .filter(([, text]) => formsOf(text).some(isBad))
    .map(([key]) => key);

test.each(BUNDLES)('the bundle %s says the same things in both languages', (_, english, german) => {
  expect(Object.keys(german).sort()).toEqual(Object.keys(english).sort());
});

test('what is filled in is the same', () => {
  const wrong = Object.keys(GERMAN).filter(
    (key) => String(placeholders(GERMAN[key])) !== String(placeholders(ENGLISH[key]))
  );
  expect(wrong).toEqual([]);
});

test('a count has both forms, and each form fills in what the other does', () => {
  const wrong = Object.entries(GERMAN).filter(([key, text]) => {
    if (typeof text === 'string') return typeof ENGLISH[key] !== 'string';
    const others = placeholders(text.other).filter((name) => name !== '{count}');
    const ones = placeholders(text.one).filter((name) => name !== '{count}');
    return typeof ENGLISH[key] === 'string' || !text.one || !text.other || String(ones) !== String(others);
  });
  expect(wrong.map(([key]) => key)).toEqual([]);
});

/** What is left when values, figures and signs are taken out: a message of these alone has nothing to translate. */
const wordsOf = (form: string): string => form.replace(/\{\w+\}/g, '').replace(/[^\p{L}]/gu, '');

const isTranslated = (key: string): boolean => String(formsOf(GERMAN[key])) !== String(formsOf(ENGLISH[key]));

test('nothing was left in English', () => {
  const left = Object.keys(GERMAN).filter(
    (key) => !isTranslated(key) && formsOf(GERMAN[key]).some((form) => wordsOf(form) !== '')
  );
  expect(left.filter((key) => !(key in SAME_IN_BOTH))).toEqual([]);
});

test('the list of what is the same in both holds nothing that differs', () => {
  const stale = Object.keys(SAME_IN_BOTH).filter((key) => !(key in GERMAN) || isTranslated(key));
  expect(stale).toEqual([]);
});

test('spacing and quotation marks are German', () => {
  expect(germanWhere((form) => form.includes('  '))).toEqual([]);
  expect(germanWhere((form) => /\.\.\.|“[^“”„]*”|‘/.test(form))).toEqual([]);
  // sections of specifications are numbered with dots
  const isNumbered = (form: string) => /\d\.\d+(°| kelvin)|\d-\d+\.\d/.test(form);
  expect(germanWhere((form) => /\d\.\d/.test(form) && !isNumbered(form))).toEqual([]);
});

test('no English word stands for a term', () => {
  const english = /\b(the|and|loop|loops|lane|slot|turns|wire|unit|call|gate|with|without)\b/i;
  expect(germanWhere((form) => english.test(form.replace(/\{\w+\}/g, '')))).toEqual([]);
});

/** One word for one thing: whoever reads a finding must recognise the field that it speaks of. */
const SHUNNED: readonly (readonly [RegExp, string])[] = [
  [/\bAdern? von|Schleifenader/, 'Draht'],
  [/Schleifenende/, 'Anschlussende'],
  [/Haltezeit/, 'Nachlaufzeit'],
  [/Durchfahrt/, 'Überfahrt'],
  [/Proximity/, 'Näheeffekt'],
  [/Spule|Schlaufe/, 'Schleife'],
  [/Detektor(?!en)/, 'Gerät, Auswertegerät'],
  [/\bSpuren?\b|Nachbarspur/, 'Fahrstreifen'],
  [/Stahlmatte/, 'Bewehrungsmatte'],
  [/Vorlaufschleife/, 'Vorfeldschleife'],
  [/Arbeitsfrequenz/, 'Betriebsfrequenz'],
  [/Einzelheiten/, 'Angaben'],
  [/Haltelinie/, 'Haltlinie']
];

test.each(SHUNNED)('%s is called otherwise: %s', (word) => {
  expect(germanWhere((form) => word.test(form))).toEqual([]);
});
