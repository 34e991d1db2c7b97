/** What a take-off reckons with beside the drawing. SI; money in the site's own currency. */
import { z } from 'zod';
import { BOUNDS, COUNTS } from '../bounds';
import { id, name, whole, within } from './basics';

const share = within({ min: 0, max: 1 });
const money = within(BOUNDS.money);
/** Of a line of the take-off, such as "wire:awg14" or "core": what the price book and the packs go by. */
const item = z.string().min(1).max(120);

/** Added to what the drawing says, as a share of it. */
const waste = z.looseObject({
  wire: share.optional(),
  cable: share.optional(),
  sealant: share.optional(),
  backer: share.optional(),
  conduit: share.optional()
});

/** What one crew does in an hour, or how long it takes over one; a crew counts as one. */
const rates = z.looseObject({
  /** Of a slot 25 mm deep; a deeper one takes longer in proportion. */
  sawing_m_per_h: within(BOUNDS.pace).optional(),
  coring_s: within(BOUNDS.seconds).optional(),
  /** Wire laid into the slot, every turn counted. */
  laying_m_per_h: within(BOUNDS.pace).optional(),
  sealing_m_per_h: within(BOUNDS.pace).optional(),
  pulling_m_per_h: within(BOUNDS.pace).optional(),
  splice_s: within(BOUNDS.seconds).optional(),
  test_s: within(BOUNDS.seconds).optional(),
  /** Setting out, cleaning and drying, a loop. */
  preparing_s: within(BOUNDS.seconds).optional(),
  /** Closing the lane and opening it again, a site. */
  setUp_s: within(BOUNDS.seconds).optional()
});

/** Of ISO 4217: three capital letters. */
export const CURRENCY = /^[A-Z]{3}$/;

export const estimate = z.looseObject({
  /** ISO 4217. */
  currency: z.string().regex(CURRENCY, { error: 'currency' }).optional(),
  /** Added to the total. */
  contingency: share.optional(),
  /** Amounts are rounded up to whole rolls, drums and cartridges. */
  wholePacks: z.boolean().optional(),
  /** Cuts run past their ends until the blade has its full depth there. */
  overcuts: z.boolean().optional(),
  bladeDiameter_m: within(BOUNDS.blade).optional(),
  /** Drilled at every corner, in place of overcuts there. */
  coreHoles: z.boolean().optional(),
  coreDiameter_m: within(BOUNDS.core).optional(),
  twistsPerMetre: within({ min: 0, max: 100 }).optional(),
  /** Pieces that hold the wires down; how far apart they lie along the slot, and how long one is. */
  backerEvery_m: within({ min: 0.05, max: 100 }).optional(),
  backerLength_m: within({ min: 0.005, max: 5 }).optional(),
  waste: waste.optional(),
  rates: rates.optional(),
  crewSize: whole(1, 50).optional(),
  /** What is bought at once: metres, cubic metres or pieces of an item. */
  packs: z
    .array(z.looseObject({ item, size: within(BOUNDS.pack) }))
    .max(COUNTS.prices)
    .optional(),
  /** For a metre, a cubic metre, a piece or an hour. */
  prices: z
    .array(z.looseObject({ item, price: money }))
    .max(COUNTS.prices)
    .optional(),
  /** Lines of the user's own, such as traffic management. */
  extras: z
    .array(
      z.looseObject({
        id,
        name: name.default(''),
        amount: within({ min: 0, max: 1e6 }),
        unit: z.enum(['each', 'm', 'h', 'day']).default('each'),
        price: money.optional()
      })
    )
    .max(COUNTS.prices)
    .optional()
});
