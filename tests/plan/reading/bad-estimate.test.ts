/** What a file may state about the take-off: the place, what was found and what was expected. */
import { describe, expect, it } from 'vitest';
import { readSite } from '#plan/read';
import { soundDocument } from './sound-document';

const CURRENCY = 'a currency as three capital letters, such as "EUR"';

const rows: readonly (readonly [estimate: unknown, path: string, found: string, expected: string])[] = [
  [{ currency: 'euro' }, 'estimate.currency', '"euro" (text)', CURRENCY],
  [{ currency: 'eur' }, 'estimate.currency', '"eur" (text)', CURRENCY],
  [{ currency: '€' }, 'estimate.currency', '"€" (text)', CURRENCY],
  [{ currency: 978 }, 'estimate.currency', '978', CURRENCY],
  [{ contingency: 1.5 }, 'estimate.contingency', '1.5', 'a number from 0 to 1'],
  [{ wholePacks: 'yes' }, 'estimate.wholePacks', '"yes" (text)', 'true or false'],
  [{ waste: { wire: -0.1 } }, 'estimate.waste.wire', '-0.1', 'a number from 0 to 1'],
  [{ bladeDiameter_m: 350 }, 'estimate.bladeDiameter_m', '350', 'a number from 0.05 to 2'],
  [{ rates: { sawing_m_per_h: 0 } }, 'estimate.rates.sawing_m_per_h', '0', 'a number from 0.1 to 10000'],
  [
    { prices: [{ item: 'crew', price: -1 }] },
    'estimate.prices[0].price',
    '-1',
    'a number from 0 to 1000000000'
  ],
  [{ prices: [{ item: '', price: 1 }] }, 'estimate.prices[0].item', '"" (text)', 'a text of 1 to 120 printable characters'], // prettier-ignore
  [
    { packs: [{ item: 'label', size: 0 }] },
    'estimate.packs[0].size',
    '0',
    'a number from 0.000001 to 1000000'
  ],
  [{ extras: [{ id: 'X1', amount: 1, unit: 'week' }] }, 'estimate.extras[0].unit', '"week" (text)', 'one of "each", "m", "h", "day"'], // prettier-ignore
  [{ crewSize: 2.5 }, 'estimate.crewSize', '2.5', 'a whole number from 1 to 50']
];

describe('an estimate that may not be', () => {
  it.each(rows)('%j', (estimate, path, found, expected) => {
    const reading = readSite(JSON.stringify({ ...soundDocument(), estimate }));
    if (reading.ok) throw new Error('was read');
    expect(reading.problems).toMatchObject([{ path, found, expected }]);
  });

  it('is read where it is sound, and keeps what it does not know', () => {
    const estimate = { currency: 'EUR', waste: { wire: 0.1 }, later: 'kept' };
    const reading = readSite(JSON.stringify({ ...soundDocument(), estimate }));
    expect(reading.ok && reading.site.estimate).toEqual(estimate);
  });
});
