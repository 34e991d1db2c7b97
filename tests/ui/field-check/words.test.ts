import { afterEach, expect, test } from 'vitest';
import { speakLanguage } from '#i18n/load';
import { LANGUAGES } from '#i18n/message';
import { ACCEPTANCE_LIMITS } from '#plan/catalogue/acceptance';
import { limitText, sourceText, spanText } from '#ui/field-check/parts/words';

afterEach(() => speakLanguage('en', ['page', 'views']));

test.each(LANGUAGES)('every published limit says whose it is in %s', async (language) => {
  await speakLanguage(language, ['page', 'views']);
  const own = sourceText('own');
  for (const { id } of ACCEPTANCE_LIMITS) {
    expect(sourceText(id)).not.toContain('field.');
    expect(sourceText(id)).not.toBe(own);
  }
});

test('limits and ranges have one unit, and a drop is shown the right way round', () => {
  expect(limitText({ id: 'a', least: 50e6, most: null }, 'insulation_ohm', 'metric')).toBe(
    'at least 50.0 MΩ'
  );
  expect(limitText({ id: 'b', least: null, most: 5 }, 'resistanceDc_ohm', 'metric')).toBe('at most 5.00 Ω');
  expect(limitText({ id: 'c', least: 60e-6, most: 100e-6 }, 'inductance_H', 'metric')).toBe(
    '60.00 – 100.0 µH'
  );
  expect(spanText(-0.022, -0.018, 'deltaLOverL', 'metric')).toBe('1.80 – 2.20 %');
});
