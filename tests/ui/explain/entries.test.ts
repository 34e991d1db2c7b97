import { describe, expect, it } from 'vitest';
import { en } from '#i18n/en';
import { ENTRIES } from '#ui/explain/entries/index';
import { factsOf } from '#ui/explain/facts';
import { readFormula } from '#ui/explain/formula';
import { EXPLAINED } from '#ui/explain/topic';
import { emptySite } from '#plan/read';

const PARTS = ['title', 'words', 'source', 'range', 'omits'] as const;
const texts: Readonly<Record<string, unknown>> = en;

describe.each(EXPLAINED)('the explanation of %s', (id) => {
  it('has an entry with formulas that can be read', () => {
    const entry = ENTRIES[id];
    expect(entry.formulas.length).toBeGreaterThan(0);
    for (const formula of entry.formulas) expect(() => readFormula(formula)).not.toThrow();
  });

  it.each(PARTS)('has its %s in writing', (part) => {
    const text = texts[`explain.${id}.${part}`];
    expect(typeof text).toBe('string');
    expect((text as string).trim().length).toBeGreaterThan(3);
    expect(text).not.toMatch(/\{\w+\}/);
  });

  it('stands without an answer: dashes, not failures', () => {
    const facts = factsOf(emptySite(), null, { id });
    for (const value of [...ENTRIES[id].inputs(facts), ENTRIES[id].result(facts)]) {
      expect(texts).toHaveProperty([value.label]);
      if (value.symbol !== '') expect(() => readFormula(value.symbol)).not.toThrow();
    }
  });
});
