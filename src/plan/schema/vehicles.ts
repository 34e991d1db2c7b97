/** A vehicle as what conducts in it. */
import { z } from 'zod';
import { BOUNDS, COUNTS } from '../bounds';
import { id, name, within } from './basics';

/** Of the bars, the plate or the rim; the defaults of steel in the pavement stand in `catalogue/metals.ts`. */
export const metal = {
  resistivity_ohm_m: within(BOUNDS.resistivity).optional(),
  relativePermeability: within(BOUNDS.permeability).optional()
};

const plate = z.looseObject({
  kind: z.literal('plate'),
  /** What it stands for: floor, engine, axle. */
  name: name.optional(),
  centre: z.tuple([within(BOUNDS.partPosition), within(BOUNDS.partPosition)]),
  width: within(BOUNDS.partSize),
  length: within(BOUNDS.partSize),
  height: within(BOUNDS.partHeight)
});

const ring = z.looseObject({
  kind: z.literal('ring'),
  name: name.optional(),
  centre: z.tuple([
    within(BOUNDS.partPosition),
    within(BOUNDS.partPosition),
    within({ min: -BOUNDS.partHeight.max, max: BOUNDS.partHeight.max })
  ]),
  radius: within(BOUNDS.ringRadius),
  conductorRadius: within(BOUNDS.conductorRadius),
  axis: z.tuple([
    z.number().min(-1e6).max(1e6),
    z.number().min(-1e6).max(1e6),
    z.number().min(-1e6).max(1e6)
  ]),
  /** Not stated: a perfect conductor, which aluminium nearly is. */
  ...metal
});

/** How a vehicle's effective height was found on the site: what it was seen to change, and what the model had said. */
const heightCalibration = z.looseObject({
  /** Name of the circuit as it was then: a record, not a reference. */
  circuit: name,
  /** Both negative: drops. */
  measured: within({ min: -1, max: 0 }),
  predicted: within({ min: -1, max: 0 }),
  /** Every part was lifted by this much, metres. */
  raised: within({ min: -BOUNDS.partHeight.max, max: BOUNDS.partHeight.max })
});

export const vehicle = z.looseObject({
  id,
  name: name.default(''),
  parts: z
    .array(z.discriminatedUnion('kind', [plate, ring]))
    .min(1)
    .max(COUNTS.parts),
  /** Outline from above, about the vehicle's own origin; where it is not stated, what the parts need. */
  body: z.looseObject({ width: within(BOUNDS.partSize), length: within(BOUNDS.partSize) }).optional(),
  calibration: heightCalibration.optional()
});
