/**
 * The site document, version 1: the only source of the document's types.
 *
 * SI throughout: metres, ohms, henries, farads, hertz, seconds; angles in degrees counter-clockwise; ratios as
 * fractions. Objects are loose: a field that this version does not know is kept and written back.
 */
import { z } from 'zod';
import { t } from '#i18n/message';
import { COUNTS } from './bounds';
import { id, name } from './schema/basics';
import { designFields } from './schema/design';
import { layers, underlay } from './schema/drawing';
import { estimate } from './schema/estimate';
import {
  fieldCheck,
  reading,
  type READING_QUANTITIES,
  type TEST_POINTS,
  type WEATHER
} from './schema/readings';
import { sheet } from './schema/sheet';
import { variants } from './schema/variants';

export { lane, mark, path, probe, steel } from './schema/roadway';
export { traffic } from './schema/traffic';
export { vehicle } from './schema/vehicles';
export { cable, circuit, conduit, loop, unit, wire } from './schema/wiring';
export { READING_QUANTITIES, TEST_POINTS, WEATHER } from './schema/readings';

const { temperature_C, temperatureRange_C, pavement, ...drawn } = designFields;
const { traffic, steel, tolerances, acceptedSteelCost, notes, ...lists } = drawn;

export const site = z.looseObject({
  format: z.literal('kerfline-site'),
  version: z.literal(1),
  name: name.default(() => t('site.untitled')),
  /** How lengths are shown; nothing stored depends on it. */
  displayUnits: z.enum(['metric', 'imperial']).default('metric'),
  temperature_C,
  temperatureRange_C,
  pavement,
  ...lists,
  underlays: z.array(underlay).max(COUNTS.underlays).default([]),
  layers: layers.optional(),
  traffic,
  steel,
  readings: z.array(reading).max(COUNTS.readings).default([]),
  /** Instruments, limits and the commissioning record; the defaults stand in `catalogue/{instruments,acceptance}.ts`. */
  fieldCheck: fieldCheck.optional(),
  tolerances,
  acceptedSteelCost,
  /** What the take-off reckons with; the defaults stand in `catalogue/estimate.ts`. */
  estimate: estimate.optional(),
  /** How the printed sheet is laid out; the defaults stand in `catalogue/sheet.ts`. */
  sheet: sheet.optional(),
  notes,
  /** The variant that the present design is a working state of; absent: of none. */
  variant: id.optional(),
  variants: variants.optional()
});

/** The declared fields only, deeply read-only: an undeclared field is kept at run time but has no name in code. */
type Document<T> = T extends readonly [infer A, infer B]
  ? readonly [A, B]
  : T extends readonly [infer A, infer B, infer C]
    ? readonly [A, B, C]
    : T extends readonly (infer E)[]
      ? readonly Document<E>[]
      : T extends object
        ? { readonly [K in keyof T as string extends K ? never : K]: Document<T[K]> }
        : T;

export type Site = Document<z.infer<typeof site>>;
export type Point = readonly [number, number];
export type Shape = Site['loops'][number]['shape'];
export type ShapeKind = Shape['kind'];
export type ShapeOf<K extends ShapeKind> = Extract<Shape, { kind: K }>;
export type Loop = Site['loops'][number];
export type Lane = Site['lanes'][number];
export type Mark = Site['marks'][number];
export type MarkKind = Mark['kind'];
export type Cable = Site['cables'][number];
export type OwnWire = Site['wires'][number];
export type Steel = Site['steel'][number];
export type Tolerances = NonNullable<Site['tolerances']>;
export type Circuit = Site['circuits'][number];
export type Channel = NonNullable<Circuit['channel']>;
export type Unit = Site['units'][number];
export type Calibration = NonNullable<Unit['calibrations']>[number];
export type Conduit = Site['conduits'][number];
export type Vehicle = Site['vehicles'][number];
export type VehiclePart = Vehicle['parts'][number];
export type HeightCalibration = NonNullable<Vehicle['calibration']>;
export type Probe = Site['probes'][number];
export type Path = Site['paths'][number];
export type Underlay = Site['underlays'][number];
export type Picture = NonNullable<Underlay['picture']>;
export type LayerName = 'underlay' | 'lanes' | 'loops' | 'notes';
export type Bends = NonNullable<Lane['bends']>;
export type Opening = NonNullable<Mark['opening']>;
export type ArrowTurn = NonNullable<Mark['turn']>;
export type Output = Channel['output'];
export type Traffic = NonNullable<Site['traffic']>;
export type Stream = Traffic['streams'][number];
export type Arrival = Traffic['arrivals'][number];
export type Signal = NonNullable<Stream['signal']>;
export type Quantity = (typeof READING_QUANTITIES)[number];
export type TestPoint = (typeof TEST_POINTS)[number];
export type Weather = (typeof WEATHER)[number];
export type DisplayUnits = Site['displayUnits'];
export type Reading = Site['readings'][number];
export type FieldCheck = NonNullable<Site['fieldCheck']>;
export type Instrument = NonNullable<FieldCheck['instruments']>[number];
export type Estimate = NonNullable<Site['estimate']>;
export type SheetLayout = NonNullable<Site['sheet']>;
export type Variant = NonNullable<Site['variants']>[number];
export type Design = Variant['design'];
export type Lines = NonNullable<Underlay['lines']>;
