import { describe, expect, it } from 'vitest';
import { takeoffOf } from '#analysis/takeoff/takeoff';
import { USUAL_ESTIMATE } from '#plan/catalogue/estimate';
import { setPack, setPrice, updateEstimate, updateRates, updateSite } from '#plan/edits/index';
import { amountText, moneyText, runText, subjectText } from '#ui/quantities/wording';
import { entriesOf } from '#ui/quantities/prices/book';
import {
  inUnit,
  perLengthShown,
  perLengthStored,
  priceShown,
  priceStored,
  priceUnitText
} from '#ui/quantities/prices/price-unit';
import { backToUsual, reckoningOf } from '#ui/quantities/prices/reckoning';
import { siteWith, square } from '../../editor/sites';

const site = siteWith({ shapes: [square(0, 0)] });

describe('a price', () => {
  it('is for a metre or a foot, a litre or a US gallon', () => {
    // 1 ft = 0.3048 m and 1 gal = 3.785411784 L, by definition
    expect(priceShown(1, 'm', 'metric')).toBe(1);
    expect(priceShown(1, 'm', 'imperial')).toBe(0.3048);
    expect(priceShown(9_000, 'm3', 'metric')).toBe(9);
    expect(priceShown(9_000, 'm3', 'imperial')).toBeCloseTo(9 * 3.785411784, 9);
    expect(priceShown(40, 'each', 'imperial')).toBe(40);
    expect([priceUnitText('m', 'imperial'), priceUnitText('m3', 'metric')]).toEqual(['ft', 'L']);
  });

  it('comes back as it was typed', () => {
    for (const system of ['metric', 'imperial'] as const)
      for (const unit of ['m', 'm3', 'each', 'h', 'day'] as const)
        for (const typed of [0.01, 0.85, 3, 1234.56])
          expect(priceShown(priceStored(typed, unit, system), unit, system)).toBe(typed);
  });

  // 40 pieces at 3 each, then said to be feet: 40 ft at 3 a foot, not 131 ft
  it('and its amount keep their numbers in another unit', () => {
    const pieces = { amount: 40, unit: 'each', price: 3 } as const;
    const feet = inUnit(pieces, 'm', 'imperial');
    expect(feet).toEqual({ amount: 12.192, unit: 'm', price: expect.closeTo(3 / 0.3048, 9) as unknown });
    expect(priceShown(feet.price!, 'm', 'imperial')).toBe(3);
    expect(inUnit(feet, 'day', 'imperial')).toEqual({ ...pieces, unit: 'day' });
    expect(inUnit({ ...pieces, price: null }, 'm', 'metric')).toEqual({ amount: 40, unit: 'm', price: null });
  });

  it('is written with two decimals, thousands apart, and its currency', () => {
    expect(moneyText(1234.5, 'EUR')).toBe('1,234.50 EUR');
    expect(moneyText(0, null)).toBe('0.00');
  });
});

describe('amounts', () => {
  it('are told in their units', () => {
    expect(runText(12.3456, 'metric')).toBe('12.35 m');
    expect(amountText(3.048, 'm', 'imperial')).toBe('10.00 ft');
    expect(amountText(1.5, 'h', 'metric')).toBe('1.5 h');
    expect(amountText(1, 'each', 'metric')).toBe('1 piece');
    expect(amountText(36.3, 'each', 'metric')).toBe('36.3 pieces');
    expect(amountText(2, 'day', 'metric')).toBe('2 days');
  });

  it('name what they are for', () => {
    expect(subjectText(site, '')).toBe('The whole site');
    expect(subjectText({ ...site, loops: [{ ...site.loops[0]!, name: 'Exit' }] }, 'L1')).toBe('Exit');
    expect(subjectText(site, 'gone')).toBe('gone');
  });
});

describe('the price book', () => {
  const takeoff = takeoffOf(site);

  it('lists what the site needs, each once, and no line of the user’s own', () => {
    const own = updateEstimate(site, { extras: [{ id: 'X1', name: 'Permit', amount: 1, unit: 'each' }] });
    const entries = entriesOf(own, takeoffOf(own));
    expect(entries.map(({ item }) => item)).toEqual(takeoff.items.map(({ item }) => item));
  });

  it('keeps what it knows of items that are not needed now', () => {
    const priced = setPack(setPrice(site, 'wire:awg12', 1.1), 'cable:pair-12', 50);
    const entries = entriesOf(priced, takeoffOf(priced));
    expect(entries.find(({ item }) => item === 'wire:awg12')).toMatchObject({ needed: null, price: 1.1, unit: 'm' }); // prettier-ignore
    expect(entries.find(({ item }) => item === 'cable:pair-12')).toMatchObject({ needed: null, pack: 50 });
  });
});

describe('what is reckoned with', () => {
  it('shows the usual where nothing is stated, and the site stays as it was', () => {
    for (const { fields } of reckoningOf(site))
      for (const { value, usual, min, max } of fields) {
        expect(value).toBeNull();
        expect(usual).toBeGreaterThanOrEqual(min);
        expect(usual).toBeLessThanOrEqual(max);
      }
  });

  it('changes one field each, and leads back to the very same document', () => {
    const fields = reckoningOf(site).flatMap((part) => part.fields);
    expect(fields).toHaveLength(21);
    for (const [at, field] of fields.entries()) {
      const changed = field.change(site, field.min === 0 ? field.usual / 2 : field.min);
      const stated = reckoningOf(changed).flatMap((part) => part.fields);
      expect(stated.flatMap(({ value }, index) => (value === null ? [] : [index]))).toEqual([at]);
      expect(field.change(changed, null).estimate ?? {}).toEqual({});
    }
  });

  it('goes back to usual part by part', () => {
    const changed = updateRates(updateEstimate(site, { crewSize: 2, contingency: 0.2 }), { test_s: 60 });
    const crew = reckoningOf(changed).find(({ title }) => title === 'estimate.part.crew')!;
    expect(backToUsual(changed, crew).estimate).toEqual({ contingency: 0.2 });
  });

  it('counts twists on a metre or on a foot', () => {
    // five a foot
    expect(perLengthShown(USUAL_ESTIMATE.twistsPerMetre, 'imperial')).toBe(5);
    expect(perLengthStored(5, 'imperial')).toBeCloseTo(USUAL_ESTIMATE.twistsPerMetre, 9);
    const imperial = updateSite(site, { displayUnits: 'imperial' });
    const field = reckoningOf(imperial).flatMap((part) => part.fields).find(({ label }) => label === 'estimate.field.twistsFoot')!; // prettier-ignore
    expect(field.change(imperial, 6).estimate?.twistsPerMetre).toBeCloseTo(6 / 0.3048, 9);
  });
});
