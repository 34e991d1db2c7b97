import { describe, expect, it } from 'vitest';
import { usualWish } from '#ui/advice/wish';
import { choiceText, objectionText } from '#ui/advice/wording';
import { OBJECTIONS } from '#analysis/advice/advice';
import { fullSite } from '../plan/edits/site';

const site = fullSite();
const circuit = site.circuits[0]!;
const accepting = (inductanceRange_H: readonly [number, number]) => ({
  ...site,
  units: site.units.map((unit) => ({ ...unit, inductanceRange_H }))
});

describe('the wish that the adviser begins with', () => {
  it('is the usual window inside what the unit accepts', () => {
    expect(usualWish(site, circuit)).toEqual({ least_H: 80e-6, most_H: 300e-6, leastQ: 5 });
    expect(usualWish(accepting([1e-4, 2.5e-4]), circuit)).toMatchObject({ least_H: 1e-4, most_H: 2.5e-4 });
  });

  it('is what the unit accepts where the usual window has no part in it', () => {
    expect(usualWish(accepting([5e-4, 2e-3]), circuit)).toMatchObject({ least_H: 5e-4, most_H: 2e-3 });
  });

  it('is the usual window for a circuit without a unit', () => {
    expect(usualWish(site, { ...circuit, channel: null })).toMatchObject({ least_H: 80e-6, most_H: 300e-6 });
  });
});

describe('objections in words', () => {
  it.each(OBJECTIONS)('says %s with its value', (code) => {
    const text = objectionText(site, { code, value: 0.004, limit: 0.5, refuses: true });
    expect(text).toMatch(/\d/);
    expect(text).not.toMatch(/[{}]/);
  });

  it('tells what stands out of the slot as a length', () => {
    const text = objectionText(site, { code: 'slot-full', value: -0.004, limit: 0, refuses: true });
    expect(text).toBe('the wires stand 4 mm out of the slot');
  });

  it('names a choice by turns and wire', () => {
    expect(choiceText(site, { turns: 1, wire: 'awg14' })).toBe('1 turn of 14 AWG');
    expect(choiceText(site, { turns: 4, wire: 'awg12' })).toBe('4 turns of 12 AWG');
  });
});
