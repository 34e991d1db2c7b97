/**
 * The site document, version 1: the only source of the document's types.
 *
 * SI throughout: metres, ohms, henries, farads, hertz, seconds; angles in degrees counter-clockwise; ratios as
 * fractions. Objects are loose: a field that this version does not know is kept and written back.
 */
import { z } from 'zod';
import { t } from '#i18n/message';
import { BOUNDS, COUNTS } from './bounds';
import { angle, id, name, note, point, points, side, whole, within } from './schema/basics';
import { ARROW_TURNS, bends, handling, layers, opening, underlay } from './schema/drawing';
import { traffic } from './schema/traffic';
import { metal, vehicle } from './schema/vehicles';

export { traffic } from './schema/traffic';
export { vehicle } from './schema/vehicles';

const rectangle = z.looseObject({
  kind: z.literal('rectangle'),
  centre: point,
  width: side,
  length: side,
  rotation: angle.default(0),
  cornerCut: within({ min: 0, max: BOUNDS.side.max }).default(0)
});

const quadrupole = z.looseObject({
  kind: z.literal('quadrupole'),
  centre: point,
  width: side,
  length: side,
  rotation: angle.default(0)
});

const diagonal = z.looseObject({
  kind: z.literal('diagonal'),
  centre: point,
  width: side,
  length: side,
  rotation: angle.default(0)
});

const circle = z.looseObject({ kind: z.literal('circle'), centre: point, diameter: side });

const polygon = z.looseObject({ kind: z.literal('polygon'), points: points(3) });

const shape = z.discriminatedUnion('kind', [rectangle, quadrupole, diagonal, circle, polygon]);

/** A way on the plan whose ends hang on marks: `length` = the drawn way plus the allowance for slack and depth. */
const route = z.looseObject({
  /** Mark at the far end, towards the cabinet. */
  to: id,
  via: z.array(point).max(COUNTS.points).default([]),
  allowance: within(BOUNDS.tail).default(0)
});

export const loop = z.looseObject({
  id,
  name: name.default(''),
  turns: whole(BOUNDS.turns.min, BOUNDS.turns.max),
  wire: id,
  slot: z.looseObject({
    depth: within(BOUNDS.slotDepth),
    width: within(BOUNDS.slotWidth),
    relativePermittivity: within(BOUNDS.permittivity).default(4)
  }),
  tail: z
    .looseObject({
      length: within(BOUNDS.tail),
      /** Drawn from the loop's nearest corner to a pull box; the length then follows the drawing. */
      route: route.optional()
    })
    .default({ length: 0 }),
  /** A resistance that the model does not know (a joint, losses in the ground), in series with the loop. */
  addedResistance_ohm: within(BOUNDS.addedResistance).optional(),
  ...handling,
  shape
});

export const lane = z.looseObject({
  id,
  name: name.default(''),
  centreline: points(2),
  width: within(BOUNDS.laneWidth),
  /** The largest vehicle that uses the lane: what the loops of the next lane must not see. */
  largestVehicle: id.optional(),
  /** The centreline counts; this says what it was drawn from, so that it can be bent again. */
  bends: bends.optional(),
  ...handling
});

const MARK_KINDS = [
  'stop-line',
  'kerb',
  'gate',
  'cover',
  'joint',
  'note',
  'pull-box',
  'cabinet',
  'conduit',
  'island',
  'arrow',
  'dimension'
] as const;

export const mark = z.looseObject({
  id,
  kind: z.enum(MARK_KINDS),
  points: points(1),
  text: note.optional(),
  /** Of a gate, whose points run from the hinge or the post to the tip of the closed leaf. */
  opening: opening.optional(),
  /** Of an arrow, whose points run from its tail to its head. */
  turn: z.enum(ARROW_TURNS).optional(),
  /** Of a dimension: how far its line lies to the left of the way from one point to the other, metres. */
  offset: within(BOUNDS.dimensionOffset).optional(),
  ...handling
});

/** A stated figure holds at the operating frequency; one that is not stated follows from the pair's geometry. */
export const cable = z.looseObject({
  id,
  name: name.default(''),
  resistancePerMetre_ohm: within(BOUNDS.resistancePerMetre).optional(),
  inductancePerMetre_H: within(BOUNDS.inductancePerMetre).optional(),
  capacitancePerMetre_F: within(BOUNDS.capacitancePerMetre).optional(),
  conductorDiameter: within(BOUNDS.wireDiameter).optional(),
  /** Between the axes of the two wires, metres. */
  spacing: within(BOUNDS.wireDiameter).optional(),
  relativePermittivity: within(BOUNDS.permittivity).optional()
});

/** The user's own wire, beside the built-in catalogue. */
export const wire = z.looseObject({
  id,
  name: name.default(''),
  conductorDiameter: within(BOUNDS.wireDiameter),
  insulatedDiameter: within(BOUNDS.wireDiameter),
  insulationPermittivity: within(BOUNDS.permittivity).default(2.3)
});

const output = z.looseObject({
  mode: z.enum(['presence', 'pulse']).default('presence'),
  delay_s: within(BOUNDS.seconds).default(0),
  extension_s: within(BOUNDS.seconds).default(0),
  longestPresence_s: within(BOUNDS.seconds).nullable().default(null),
  /** Where one is not stated, the usual value of `catalogue/timings.ts` holds. */
  pulse_s: within(BOUNDS.pulse).optional(),
  rearm_s: within(BOUNDS.timing).optional(),
  recovery_s: within(BOUNDS.timing).optional(),
  adaptation_s: within(BOUNDS.adaptation).optional()
});

const channel = z.looseObject({
  unit: id,
  number: whole(1, COUNTS.channels),
  /** Position in the unit's `settings_F`, counted from 1. */
  frequencySetting: whole(1, COUNTS.settings).default(1),
  /** A number here overrides the setting. */
  frequency_Hz: within(BOUNDS.frequency).nullable().default(null),
  /** A frequency plan leaves the channel's setting alone. */
  pinned: z.boolean().optional(),
  tripThreshold: within(BOUNDS.ratio),
  releaseRatio: within({ min: 0.01, max: 1 }).default(0.6),
  output: output.default({ mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null })
});

export const circuit = z.looseObject({
  id,
  name: name.default(''),
  /** Loops of a string in series, strings in parallel. */
  strings: z
    .array(
      z
        .array(z.looseObject({ loop: id, reversed: z.boolean().default(false) }))
        .min(1)
        .max(COUNTS.loopsPerCircuit)
    )
    .min(1)
    .max(COUNTS.loopsPerCircuit),
  leadIn: z.looseObject({
    cable: id,
    length: within(BOUNDS.leadIn),
    /** Further cables towards the cabinet, in that order. */
    further: z
      .array(z.looseObject({ cable: id, length: within(BOUNDS.leadIn) }))
      .max(COUNTS.cablesInRow)
      .optional(),
    /** Drawn from a pull box to the cabinet; the first cable's length then follows the drawing. */
    route: route.extend({ from: id }).optional()
  }),
  channel: channel.nullable().default(null),
  /** Vehicles asked for: each of them must make a call on this circuit. */
  detect: z.array(id).max(COUNTS.vehicles).default(['car'])
});

/** How a setting's capacitance was found on the site: a circuit of known inductance, and the frequency that was read. */
const calibration = z.looseObject({
  /** Counted from 1. */
  setting: whole(1, COUNTS.settings),
  /** Name of the circuit as it was then: a record, not a reference. */
  circuit: name,
  frequency_Hz: within(BOUNDS.frequency),
  /** At the terminals, as the model had it. */
  inductance_H: within(BOUNDS.inductance),
  /** What came out, and what the setting had been before. */
  capacitance_F: within(BOUNDS.settingCapacitance),
  before_F: within(BOUNDS.settingCapacitance)
});

export const unit = z.looseObject({
  id,
  name: name.default(''),
  channels: whole(1, COUNTS.channels),
  scansInTurn: z.boolean(),
  measuringTime_s: within(BOUNDS.measuringTime),
  settings_F: z.array(within(BOUNDS.settingCapacitance)).min(1).max(COUNTS.settings),
  /** Where it is given, the settings are shown and typed as frequencies on this inductance; the capacitances still count. */
  statedInductance_H: within(BOUNDS.inductance).optional(),
  /** At most one a setting. */
  calibrations: z.array(calibration).max(COUNTS.settings).optional(),
  inductanceRange_H: z.tuple([within(BOUNDS.inductance), within(BOUNDS.inductance)])
});

/** Lead-ins that lie side by side. */
export const conduit = z.looseObject({
  id,
  name: name.default(''),
  circuits: z.array(id).max(COUNTS.circuits).default([]),
  length: within(BOUNDS.leadIn),
  /** Between every two of them, as an amount; the default stands in `catalogue/conduits.ts`. */
  mutualPerMetre_H: within(BOUNDS.mutualPerMetre).optional()
});

/** A way across the plan that is no lane: what a vehicle takes when it turns, cuts a corner or changes lanes. */
export const path = z.looseObject({ id, name: name.default(''), points: points(2), ...handling });

export const probe = z.looseObject({ vehicle: id, at: point, heading: angle.default(90), ...handling });

export const steel = z.discriminatedUnion('kind', [
  z.looseObject({
    id,
    kind: z.literal('mat'),
    depth: within(BOUNDS.steelDepth),
    pitch: within(BOUNDS.pitch),
    barRadius: within(BOUNDS.barRadius),
    outline: points(3),
    ...metal,
    ...handling
  }),
  z.looseObject({
    id,
    kind: z.literal('plate'),
    depth: within({ min: -5, max: 5 }),
    outline: points(3),
    ...metal,
    ...handling
  })
]);

/** A meter reading at the cabinet or the pull box; every quantity is optional, what was not measured stays out. */
const reading = z.looseObject({
  circuit: id.optional(),
  at: z.string().max(40).optional(),
  testPoint: z.enum(['loop', 'pull-box', 'cabinet', 'unit']).optional(),
  resistanceDc_ohm: within({ min: 0, max: 1e9 }).optional(),
  inductance_H: within({ min: 0, max: 1 }).optional(),
  q: within({ min: 0, max: 10_000 }).optional(),
  frequency_Hz: within({ min: 0, max: BOUNDS.frequency.max }).optional(),
  insulation_ohm: within({ min: 0, max: 1e15 }).optional(),
  deltaLOverL: within({ min: -1, max: 1 }).optional(),
  temperature_C: within(BOUNDS.temperature).optional(),
  note: note.optional()
});

/** Plus-or-minus tolerances, SI. */
const tolerances = z.looseObject({
  dimensions_m: within({ min: 0, max: 1 }).optional(),
  depth_m: within({ min: 0, max: 0.5 }).optional(),
  wirePitch_m: within({ min: 0, max: 0.05 }).optional(),
  leadInLength_m: within({ min: 0, max: 1_000 }).optional(),
  temperature_C: within({ min: 0, max: 60 }).optional(),
  relativePermittivity: within({ min: 0, max: 50 }).optional(),
  vehicleHeight_m: within({ min: 0, max: 2 }).optional()
});

export const site = z.looseObject({
  format: z.literal('kerfline-site'),
  version: z.literal(1),
  name: name.default(() => t('site.untitled')),
  /** How lengths are shown; nothing stored depends on it. */
  displayUnits: z.enum(['metric', 'imperial']).default('metric'),
  temperature_C: within(BOUNDS.temperature).default(20),
  /** Wire on the coldest and the hottest day; the defaults stand in `catalogue/tolerances.ts`. */
  temperatureRange_C: z.tuple([within(BOUNDS.temperature), within(BOUNDS.temperature)]).optional(),
  pavement: z
    .looseObject({
      material: z.string().max(40).default('asphalt'),
      relativePermittivity: within(BOUNDS.permittivity).default(5),
      /** Siemens per metre; 0 leaves the pavement's own losses out. */
      conductivity_S_m: within(BOUNDS.conductivity).optional()
    })
    .default({ material: 'asphalt', relativePermittivity: 5 }),
  lanes: z.array(lane).max(COUNTS.lanes).default([]),
  marks: z.array(mark).max(COUNTS.marks).default([]),
  loops: z.array(loop).max(COUNTS.loops).default([]),
  wires: z.array(wire).max(COUNTS.wires).default([]),
  cables: z.array(cable).max(COUNTS.cables).default([]),
  circuits: z.array(circuit).max(COUNTS.circuits).default([]),
  units: z.array(unit).max(COUNTS.units).default([]),
  conduits: z.array(conduit).max(COUNTS.conduits).default([]),
  vehicles: z.array(vehicle).max(COUNTS.vehicles).default([]),
  probes: z.array(probe).max(COUNTS.probes).default([]),
  paths: z.array(path).max(COUNTS.paths).default([]),
  underlays: z.array(underlay).max(COUNTS.underlays).default([]),
  layers: layers.optional(),
  traffic: traffic.optional(),
  steel: z.array(steel).max(COUNTS.steel).default([]),
  readings: z.array(reading).max(COUNTS.readings).default([]),
  tolerances: tolerances.optional(),
  /** The share of a vehicle's response that steel may cost; the default stands in `catalogue/tolerances.ts`. */
  acceptedSteelCost: within(BOUNDS.steelCost).optional(),
  notes: note.optional()
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
export type DisplayUnits = Site['displayUnits'];
