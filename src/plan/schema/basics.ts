/** What the parts of the document's schema are made of. */
import { z } from 'zod';
import { BOUNDS, COUNTS } from '../bounds';

// zod's compiled parsers probe `new Function`, which the page's content security policy forbids and reports.
z.config({ jitless: true });

export const within = ({ min, max }: { min: number; max: number }) => z.number().min(min).max(max);
export const whole = (min: number, max: number) => z.int().min(min).max(max);

export const id = z
  .string()
  .min(1)
  .max(80)
  .regex(/^[^\p{C}]+$/u);
export const name = z.string().max(COUNTS.nameLength);
export const note = z.string().max(COUNTS.noteLength);
const coordinate = within(BOUNDS.coordinate);
export const point = z.tuple([coordinate, coordinate]);
export const points = (least: number) => z.array(point).min(least).max(COUNTS.points);
export const side = within(BOUNDS.side);
export const angle = within({ min: -3_600, max: 3_600 });
