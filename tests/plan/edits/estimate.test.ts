import { describe, expect, it } from 'vitest';
import { BOUNDS, COUNTS } from '#plan/bounds';
import { estimateOf, packOf, priceOf, USUAL_ESTIMATE } from '#plan/catalogue/estimate';
import {
  addExtra,
  newExtra,
  removeExtra,
  setPack,
  setPrice,
  updateEstimate,
  updateExtra,
  updateRates,
  updateSheet,
  updateWaste
} from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { fullSite as sample } from './site';

const fullSite = sample();
const isReadable = (site: Site): boolean => readSite(writeSite(site)).ok;

describe('prices and packs', () => {
  it('are set, changed and taken away by item', () => {
    const priced = setPrice(setPrice(fullSite, 'wire:awg14', 0.4), 'crew', 90);
    expect([priceOf(priced, 'wire:awg14'), priceOf(priced, 'crew'), priceOf(priced, 'core')]).toEqual([0.4, 90, null]); // prettier-ignore
    expect(priceOf(setPrice(priced, 'wire:awg14', 0.5), 'wire:awg14')).toBe(0.5);
    expect(isReadable(priced)).toBe(true);
    const without = setPrice(setPrice(priced, 'wire:awg14', null), 'crew', null);
    expect(without.estimate?.prices).toBeUndefined();
  });

  it('go back to the usual pack', () => {
    const packed = setPack(fullSite, 'sealant', 0.0006);
    expect(packOf(packed, 'sealant')).toBe(0.0006);
    expect(packOf(setPack(packed, 'sealant', null), 'sealant')).toBe(0.3e-3);
    expect(packOf(fullSite, 'crew')).toBeNull();
  });

  it('give the same site where nothing changes or nothing can', () => {
    const priced = setPack(setPrice(fullSite, 'wire:awg14', 0.4), 'wire:awg14', 500);
    const same = [
      setPrice(priced, 'wire:awg14', 0.4),
      setPack(priced, 'wire:awg14', 500),
      setPrice(priced, 'core', null),
      setPack(priced, 'core', null),
      setPrice(priced, 'core', -1),
      setPrice(priced, 'core', Number.NaN),
      setPrice(priced, 'core', BOUNDS.money.max * 2),
      setPrice(priced, '', 1),
      setPack(priced, 'core', 0)
    ];
    for (const site of same) expect(site).toBe(priced);
  });

  it('keep what a file holds beside them, and one entry of each item', () => {
    const prices = [
      { item: 'crew', price: 1, from: 'list 7' },
      { item: 'crew', price: 2 }
    ];
    const doubled: Site = { ...fullSite, estimate: { prices } };
    expect(setPrice(doubled, 'crew', 5).estimate?.prices).toEqual([{ item: 'crew', price: 5, from: 'list 7' }]); // prettier-ignore
    expect(setPrice(doubled, 'crew', null).estimate?.prices).toBeUndefined();
  });

  it('end at the longest list that a file may hold', () => {
    const prices = Array.from({ length: COUNTS.prices }, (_, k) => ({ item: `i${k}`, price: 1 }));
    const full: Site = { ...fullSite, estimate: { prices } };
    expect(setPrice(full, 'one more', 1)).toBe(full);
  });
});

describe('waste and rates', () => {
  it('are stated one by one, and usual where they are not', () => {
    const site = updateRates(updateWaste(fullSite, { wire: 0.1 }), { splice_s: 600 });
    expect(estimateOf(site).waste).toEqual({ ...USUAL_ESTIMATE.waste, wire: 0.1 });
    expect(estimateOf(site).rates).toEqual({ ...USUAL_ESTIMATE.rates, splice_s: 600 });
    expect(isReadable(site)).toBe(true);
  });

  it('are usual again once taken away', () => {
    const site = updateWaste(updateWaste(fullSite, { wire: 0.1 }), { wire: undefined });
    expect(site.estimate?.waste).toBeUndefined();
    expect(estimateOf(site)).toEqual(USUAL_ESTIMATE);
  });

  it('out of bounds change nothing', () => {
    expect(updateWaste(fullSite, { wire: 1.01 })).toBe(fullSite);
    expect(updateRates(fullSite, { sawing_m_per_h: 0 })).toBe(fullSite);
    expect(updateWaste(fullSite, {})).toBe(fullSite);
    expect(updateEstimate(fullSite, { currency: 'euro' })).toBe(fullSite);
    expect(updateEstimate(fullSite, { bladeDiameter_m: 0.01 })).toBe(fullSite);
    expect(updateSheet(fullSite, { scale: 77 as never })).toBe(fullSite);
  });
});

describe('lines of the user’s own', () => {
  const one = addExtra(fullSite, newExtra(fullSite, 'Permit'));
  const two = addExtra(one, newExtra(one, 'Closing the lane'));

  it('are added with an id of their own', () => {
    expect(two.estimate?.extras).toEqual([
      { id: 'X1', name: 'Permit', amount: 1, unit: 'each' },
      { id: 'X2', name: 'Closing the lane', amount: 1, unit: 'each' }
    ]);
    expect(isReadable(two)).toBe(true);
  });

  it('are changed, and their price stated or not', () => {
    const changed = updateExtra(two, 'X2', { amount: 3, unit: 'day', price: 250 });
    expect(changed.estimate?.extras?.[1]).toEqual({ id: 'X2', name: 'Closing the lane', amount: 3, unit: 'day', price: 250 }); // prettier-ignore
    expect(updateExtra(changed, 'X2', { price: undefined }).estimate?.extras?.[1]).not.toHaveProperty(
      'price'
    );
  });

  it('are removed with their price and pack', () => {
    const priced = setPack(setPrice(two, 'extra:X2', 80), 'extra:X2', 2);
    const left = removeExtra(priced, 'X2').estimate!;
    expect(left.extras?.map(({ id }) => id)).toEqual(['X1']);
    expect([left.prices, left.packs]).toEqual([undefined, undefined]);
  });

  it('give the same site for an id that is taken or not there, and for what may not be', () => {
    expect(addExtra(two, { ...newExtra(two, ''), id: 'X1' })).toBe(two);
    expect(addExtra(two, { ...newExtra(two, ''), amount: -1 })).toBe(two);
    expect(updateExtra(two, 'X9', { amount: 2 })).toBe(two);
    expect(updateExtra(two, 'X1', { amount: 1 })).toBe(two);
    expect(updateExtra(two, 'X1', { amount: Infinity })).toBe(two);
    expect(removeExtra(two, 'X9')).toBe(two);
    const extras = Array.from({ length: COUNTS.prices }, (_, k) => ({ id: `E${k}`, name: '', amount: 1, unit: 'each' as const })); // prettier-ignore
    const full: Site = { ...fullSite, estimate: { extras } };
    expect(addExtra(full, newExtra(full, 'one more'))).toBe(full);
  });
});
