/** What meters said on the site, with what they were, and how the work was accepted. SI. */
import { z } from 'zod';
import { BOUNDS, COUNTS } from '../bounds';
import { id, name, note, whole, within } from './basics';
import { PAPERS } from './sheet';

/** What one reading can hold, in the order in which it is taken down. */
export const READING_QUANTITIES = [
  'resistanceDc_ohm',
  'inductance_H',
  'q',
  'frequency_Hz',
  'insulation_ohm',
  'insulationBetween_ohm',
  'deltaLOverL'
] as const;

/**
 * Where the meter hangs: on one loop with its tail, unspliced at the pull box; on the spliced loops of a circuit at the
 * pull box, lead-in off; on the lead-in at the cabinet, unit off; or it is the unit itself that shows the figure.
 */
export const TEST_POINTS = ['loop', 'pull-box', 'cabinet', 'unit'] as const;

export const WEATHER = ['dry', 'damp', 'wet', 'frozen'] as const;

/** A share of the reading and a least part that comes on top of it, in the quantity's own unit. */
const accuracy = z.looseObject({
  quantity: z.enum(READING_QUANTITIES),
  share: within({ min: 0, max: 1 }),
  floor: within({ min: 0, max: 1e9 }).default(0)
});

/** Every quantity is optional: what was not measured stays out. */
export const reading = z.looseObject({
  id: id.optional(),
  circuit: id.optional(),
  /** The loop that was measured alone; without it a reading at "loop" is of the circuit's only loop. */
  loop: id.optional(),
  /** ISO 8601. */
  at: z.string().max(40).optional(),
  testPoint: z.enum(TEST_POINTS).optional(),
  resistanceDc_ohm: within({ min: 0, max: 1e9 }).optional(),
  inductance_H: within({ min: 0, max: 1 }).optional(),
  q: within({ min: 0, max: 10_000 }).optional(),
  frequency_Hz: within({ min: 0, max: BOUNDS.frequency.max }).optional(),
  /** Of the loop's conductors to ground. */
  insulation_ohm: within({ min: 0, max: 1e15 }).optional(),
  /** Between the two wires of a lead-in whose far end is open. */
  insulationBetween_ohm: within({ min: 0, max: 1e15 }).optional(),
  /** Negative: a drop. */
  deltaLOverL: within({ min: -1, max: 1 }).optional(),
  /** For these the meter showed more than it can measure; no figure is given. */
  overRange: z.array(z.enum(READING_QUANTITIES)).max(READING_QUANTITIES.length).optional(),
  /** At which the meter measured inductance and Q. */
  meterFrequency_Hz: within(BOUNDS.frequency).optional(),
  insulationVoltage_V: within({ min: 1, max: 10_000 }).optional(),
  /** Frequency setting of the unit while it was read. */
  setting: whole(1, COUNTS.settings).optional(),
  /** That stood on the loops for `deltaLOverL`, where it answers most. */
  vehicle: id.optional(),
  temperature_C: within(BOUNDS.temperature).optional(),
  weather: z.enum(WEATHER).optional(),
  instruments: z.array(id).max(8).optional(),
  /** Initials. */
  by: z.string().max(40).optional(),
  /** One of those against which later readings are held. */
  isCommissioning: z.boolean().optional(),
  note: note.optional()
});

const instrument = z.looseObject({
  id,
  name: name.default(''),
  accuracies: z.array(accuracy).max(READING_QUANTITIES.length).default([]),
  /** At which it measures inductance and Q. */
  testFrequency_Hz: within(BOUNDS.frequency).optional()
});

/** What was agreed about one circuit on the day. */
const acceptance = z.looseObject({
  circuit: id,
  verdict: z.enum(['accepted', 'conditional', 'refused']),
  remarks: note.optional()
});

export const fieldCheck = z.looseObject({
  /** Ids of `catalogue/acceptance.ts`: the published limits that hold here. */
  limits: z.array(id).max(20).optional(),
  /** Least insulation that the contract asks for, beside the published limits. */
  insulationLimit_ohm: within({ min: 0, max: 1e12 }).optional(),
  instruments: z.array(instrument).max(COUNTS.instruments).optional(),
  /** The commissioning record's own words. */
  record: z
    .looseObject({
      date: z.string().max(40).optional(),
      installedBy: name.optional(),
      testedBy: name.optional(),
      witnessedBy: name.optional(),
      remarks: note.optional(),
      circuits: z.array(acceptance).max(COUNTS.circuits).optional(),
      /** Of the record and of the empty form; the usual one stands in `catalogue/record-paper.ts`. */
      paper: z.enum(PAPERS).optional(),
      orientation: z.enum(['portrait', 'landscape']).optional(),
      /** Of the empty form: every circuit begins on a page of its own. */
      onePageEach: z.boolean().optional()
    })
    .optional()
});
