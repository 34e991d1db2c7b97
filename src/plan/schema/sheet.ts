/** How the printed sheet is laid out. */
import { z } from 'zod';
import { COUNTS } from '../bounds';
import { id, name, note } from './basics';

export const PAPERS = ['A4', 'A3', 'letter', 'tabloid'] as const;
/** One to so many. */
export const SCALES = [50, 75, 100, 125, 150, 200, 250, 300, 400, 500] as const;
export const SHEET_PARTS = [
  'plan',
  'loops',
  'wiring',
  'section',
  'readings',
  'settings',
  'quantities',
  'cutting',
  'cautions'
] as const;

/** What offsets and stations are measured from. */
const baseline = z.discriminatedUnion('kind', [
  /** The centreline of a lane, from its start. */
  z.looseObject({ kind: z.literal('lane'), lane: id }),
  /** A line that is drawn: a kerb, a stop line, a joint. */
  z.looseObject({ kind: z.literal('mark'), mark: id })
]);

export const sheet = z.looseObject({
  paper: z.enum(PAPERS).optional(),
  orientation: z.enum(['portrait', 'landscape']).optional(),
  /** Not stated: the largest of `SCALES` that fits. */
  scale: z.literal(SCALES).optional(),
  parts: z.array(z.enum(SHEET_PARTS)).max(SHEET_PARTS.length).optional(),
  number: name.optional(),
  revision: name.optional(),
  /** As it is to be printed. */
  date: name.optional(),
  drawnBy: name.optional(),
  checkedBy: name.optional(),
  client: name.optional(),
  remarks: note.max(COUNTS.noteLength).optional(),
  baseline: baseline.optional(),
  /** With a page on which the kept designs stand side by side; not stated: without. */
  comparesDesigns: z.boolean().optional()
});
