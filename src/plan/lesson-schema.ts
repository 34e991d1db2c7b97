/**
 * The format of a lesson: a small site, a question, predictions to choose from, an experiment, and an explanation with the
 * figures that come out. Nothing in it says which prediction is right: each has a condition, and the figures decide. SI.
 *
 * Objects are strict: a slip in a name is told, since nobody would notice that an optional field does nothing.
 */
import { z } from 'zod';
import { id } from './schema/basics';
import { VARIABLE_KINDS } from './variables/variable';

export const LESSON_VERSION = 1;

const LONG = 4_000;
/** The English holds where the language that is spoken is missing. */
const words = z.strictObject({
  en: z.string().min(1).max(LONG),
  de: z.string().min(1).max(LONG).optional()
});
/** A name of a measure; what stands in braces in a text is one of them. */
const measureName = z
  .string()
  .max(40)
  .regex(/^[a-z][A-Za-z0-9]*$/u, { error: 'measureName' });

const variable = z.strictObject({
  kind: z.enum(VARIABLE_KINDS),
  subject: id.nullable(),
  other: id.optional()
});
const amount = z.number().min(-1e12).max(1e12);
const swept = z.strictObject({ variable, values: z.array(amount).min(2).max(400) });

/** What kinds there are only `analysis` knows: `analysis/lessons/check.ts`. */
const figure = z.strictObject({
  kind: z.string().min(1).max(40),
  subject: id.nullable(),
  other: id.optional(),
  vehicle: id.optional(),
  path: z.enum(['worst', 'best', 'offset', 'standing']).optional()
});

/** One curve of the experiment: of which figure, and of which value of the family or which design, both counted from 0. */
const curve = { figure: z.int().min(0).max(2).default(0), curve: z.int().min(0).max(19).default(0) };
const stretch = { ...curve, from: amount.optional(), to: amount.optional() };

const is = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('value'), ...curve, x: amount }),
  /** Of y, and the x where it stands; over the whole curve, or between `from` and `to`. */
  z.strictObject({ kind: z.literal('highest'), ...stretch }),
  z.strictObject({ kind: z.literal('lowest'), ...stretch }),
  z.strictObject({ kind: z.literal('highestAt'), ...stretch }),
  z.strictObject({ kind: z.literal('lowestAt'), ...stretch }),
  /** n of y ∝ xⁿ between two values of x. */
  z.strictObject({ kind: z.literal('exponent'), ...curve, from: amount, to: amount }),
  /** The first x at which the curve passes a level. */
  z.strictObject({ kind: z.literal('crossesAt'), ...curve, level: amount }),
  /** Of two measures that stand above this one. */
  z.strictObject({ kind: z.literal('ratio'), of: measureName, to: measureName }),
  z.strictObject({ kind: z.literal('difference'), of: measureName, to: measureName })
]);

/** As what a measure is written, in the units that are shown. */
const SHOWN = [
  'number',
  'percent',
  'length',
  'smallLength',
  'inductance',
  'frequency',
  'resistance',
  'time',
  'count'
] as const;

const measure = z.strictObject({
  is,
  shown: z.enum(SHOWN),
  /** Significant digits; without it as many as the program shows elsewhere. */
  digits: z.int().min(1).max(6).optional()
});

const prediction = z.strictObject({
  says: words,
  /** Right when atLeast ≤ measure < below. */
  when: z.strictObject({ measure: measureName, atLeast: amount.optional(), below: amount.optional() })
});

const place = z.tuple([amount, amount]);

const experiment = z.strictObject({
  x: swept,
  /** A second number: a curve a value. */
  family: swept.nullable().default(null),
  /** In its place: a curve a variant of the site; null for the site as it stands. */
  designs: z
    .array(z.strictObject({ variant: id.nullable(), label: words }))
    .min(1)
    .max(4)
    .nullable()
    .default(null),
  figures: z.array(figure).min(1).max(3),
  /** Where vehicles drive for figures at the offset, and stand. */
  place: z
    .strictObject({ offset_m: amount.default(0), along_m: amount.default(0) })
    .default({ offset_m: 0, along_m: 0 }),
  /** Logarithmic axes, where a power is to be seen. */
  isLogarithmic: z.boolean().default(false),
  /** A picture beside the curve: a section through the field, standing on a line of the plan. */
  field: z
    .strictObject({
      source: z.strictObject({ kind: z.enum(['loop', 'circuit']), id }),
      from: place,
      to: place,
      low_m: amount,
      high_m: amount,
      withVehicle: z.boolean().default(false)
    })
    .optional()
});

export const lesson = z.strictObject({
  format: z.literal('kerfline-lesson'),
  version: z.literal(LESSON_VERSION),
  id: z
    .string()
    .max(60)
    .regex(/^[a-z][a-z0-9-]*$/u, { error: 'lessonId' }),
  title: words,
  question: words,
  /** A whole site document; its variants are the designs of an experiment. */
  site: z.looseObject({}),
  experiment,
  measures: z.record(measureName, measure),
  predictions: z.array(prediction).min(2).max(5),
  /** Paragraphs; {name} stands for a measure. */
  explanation: z.array(words).min(1).max(8),
  /** The published comparison, where there is one. */
  published: z.strictObject({ source: words, says: words }).optional()
});

export type Lesson = z.infer<typeof lesson>;
export type Words = z.infer<typeof words>;
export type Measure = Lesson['measures'][string];
