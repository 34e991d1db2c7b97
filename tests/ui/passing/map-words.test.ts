import { describe, expect, it } from 'vitest';
import { levelText, thresholdText } from '#ui/passing/map/words';

describe('figures at lines', () => {
  it.each([
    [0.0002, '0.02 %'],
    [0.01, '1 %'],
    [0.0015, '0.15 %'],
    [0.1, '10 %'],
    [0.00125, '0.125 %'],
    [0, '0 %']
  ])('%d is %s', (level, text) => {
    expect(levelText('metric', level)).toBe(text);
  });

  it('a threshold has two digits', () => {
    expect(thresholdText('metric', 0.0016)).toBe('0.16 %');
  });
});
