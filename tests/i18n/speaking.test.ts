import { afterEach, describe, expect, it } from 'vitest';
import { languageOf } from '#i18n/choose';
import { speakFirstWords } from '#i18n/first-words';
import { loadMessages, speakLanguage } from '#i18n/load';
import { dateTime, decimalSign, listed, timeOfDay, withinSentence } from '#i18n/locale';
import { spokenLanguage, t } from '#i18n/message';
import { speakWhole } from '#i18n/whole';

afterEach(async () => {
  await speakLanguage('en', ['page']);
  speakWhole('en');
});

describe('the language that is chosen', () => {
  it.each([
    ['system', ['de-AT', 'en'], 'de'],
    ['system', ['fr', 'en-GB', 'de'], 'en'],
    ['system', ['fr-FR'], 'en'],
    ['system', [], 'en'],
    ['de', ['en'], 'de'],
    ['en', ['de'], 'en']
  ] as const)('%s among %j: %s', (choice, preferred, language) => {
    expect(languageOf(choice, preferred)).toBe(language);
  });
});

describe('changing the language', () => {
  it('says what it said before in the new one', async () => {
    const english = t('undo.none');
    await speakLanguage('de', ['page', 'views']);
    expect(spokenLanguage()).toBe('de');
    expect(t('undo.none')).not.toBe(english);
    await speakLanguage('en', ['page', 'views']);
    expect(t('undo.none')).toBe(english);
  });

  it('heeds the last of several wishes, whichever is there first', async () => {
    await Promise.all([speakLanguage('de', ['page']), speakLanguage('en', ['page'])]);
    expect(spokenLanguage()).toBe('en');
    await Promise.all([speakLanguage('en', ['page']), speakLanguage('de', ['page'])]);
    expect(spokenLanguage()).toBe('de');
  });

  it('is not undone by more of the language before', async () => {
    await speakLanguage('en', ['page']);
    const more = loadMessages('en', ['views']);
    await Promise.all([speakLanguage('de', ['page', 'views']), more]);
    expect(spokenLanguage()).toBe('de');
    expect(t('undo.none')).toBe('Nichts rückgängig zu machen');
  });

  it('has words before any bundle is there', () => {
    speakFirstWords('de');
    expect(t('page.opening')).toBe('Wird geöffnet …');
  });
});

describe('figures in messages', () => {
  it('have the decimal sign of the language', () => {
    expect(t('calls.times', { rate: 0.25 })).toContain('0.25');
    speakWhole('de');
    expect(decimalSign()).toBe(',');
    expect(t('calls.times', { rate: 0.25 })).toContain('0,25');
  });

  it('leave texts as they are', () => {
    speakWhole('de');
    expect(t('page.title', { site: 'Tor 1.5' })).toContain('Tor 1.5');
  });
});

describe('dates and lists', () => {
  const at = new Date(2026, 2, 5, 14, 32).getTime();

  it('are English', () => {
    speakWhole('en');
    expect(dateTime(at)).toBe('5 Mar 2026, 14:32');
    expect(timeOfDay(at)).toBe('14:32');
    expect(listed(['A', 'B', 'C'])).toBe('A, B, and C');
    expect(withinSentence('Small car')).toBe('small car');
  });

  it('are German', () => {
    speakWhole('de');
    expect(dateTime(at)).toBe('05.03.2026, 14:32');
    expect(timeOfDay(at)).toBe('14:32');
    expect(listed(['A', 'B', 'C'])).toBe('A, B und C');
    expect(withinSentence('Kleinwagen')).toBe('Kleinwagen');
  });
});

describe('a name within a sentence', () => {
  it.each([
    ['turns nothing that follows it', 'Nord\u202eeinfahrt\u2067', 'Nordeinfahrt'],
    ['keeps its own direction and leaves the sentence its', 'שער', '\u2068שער\u2069']
  ])('%s', (_, step, shown) => {
    expect(t('undo.step', { step })).toContain(`${shown}`);
    expect(t('undo.step', { step })).not.toMatch(/[\u202a-\u202e\u2066\u2067]/);
  });
});
